// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.job.internal.NewSheet;

/** Opens sheet files on behalf of the job. */
final class SheetIntake {

    private SheetIntake() {
    }

    /** Takes files in, each opened once to see that it can be; keeps the password with those that need it. */
    static List<NewSheet> take(List<Path> files, String password) throws JobException {
        List<NewSheet> sheets = new ArrayList<>();
        for (Path file : files) {
            try {
                sheets.add(take(file, password));
            } catch (SheetException e) {
                throw new JobException(JobException.Problem.SHEET, e.getMessage(), e);
            }
        }
        return sheets;
    }

    private static NewSheet take(Path file, String password) throws SheetException {
        try {
            return open(file, null);
        } catch (SheetException e) {
            if (e.problem() != SheetException.Problem.PASSWORD_NEEDED || password == null) {
                throw e;
            }
            return open(file, password);
        }
    }

    private static NewSheet open(Path file, String password) throws SheetException {
        try (SheetFile sheet = SheetFile.open(file, password)) {
            return new NewSheet(sheet.name(), sheet.bytes(), sheet.pageCount(), password);
        }
    }
}
