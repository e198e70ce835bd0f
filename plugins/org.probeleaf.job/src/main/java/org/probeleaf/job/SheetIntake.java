// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.job.internal.NewSheet;
import org.probeleaf.recognition.Progress;

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

    /** Draws every page of a sheet file under its number in the job. */
    static List<Drawing> draw(JobSheet sheet, byte[] bytes, String password, Progress progress) throws JobException {
        List<Drawing> drawings = new ArrayList<>();
        try (SheetFile file = SheetFile.open(bytes, sheet.fileName(), password)) {
            for (int i = 1; i <= sheet.pageCount(); i++) {
                if (progress.cancelled()) {
                    throw new CancellationException("stopped");
                }
                Drawing d = file.draw(i);
                drawings.add(new Drawing(sheet.firstPage() + i - 1, d.width(), d.height(), d.kind(), d.strokes(),
                        d.fills(), d.texts(), d.pictures()));
            }
        } catch (SheetException e) {
            throw new JobException(JobException.Problem.SHEET, e.getMessage(), e);
        }
        return drawings;
    }
}
