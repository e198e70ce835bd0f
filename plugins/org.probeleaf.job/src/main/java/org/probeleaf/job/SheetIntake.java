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

    /** Takes files in, each opened once to see that it can be. */
    static List<NewSheet> take(List<Path> files, String password) throws JobException {
        List<NewSheet> sheets = new ArrayList<>();
        for (Path file : files) {
            try (SheetFile sheet = SheetFile.open(file, password)) {
                sheets.add(new NewSheet(sheet.name(), sheet.bytes(), sheet.pageCount(), password));
            } catch (SheetException e) {
                throw new JobException(JobException.Problem.SHEET, e.getMessage(), e);
            }
        }
        return sheets;
    }
}
