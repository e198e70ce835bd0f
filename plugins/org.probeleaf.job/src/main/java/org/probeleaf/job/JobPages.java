// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.util.List;
import java.util.function.BooleanSupplier;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.recognition.PageSource;

/**
 * The pages of a job's sheet files under their numbers in the job. Each thread that draws has one file open at a time.
 *
 * @param sheets    the sheet files, in order
 * @param bytes     of each
 * @param passwords of each, null where it needs none
 */
record JobPages(List<JobSheet> sheets, List<byte[]> bytes, List<String> passwords) implements PageSource {

    @Override
    public int size() {
        return sheets.stream().mapToInt(JobSheet::pageCount).sum();
    }

    @Override
    public Hand open() {
        return new JobHand();
    }

    private final class JobHand implements Hand {

        private SheetFile open;
        private int openIndex = -1;

        @Override
        public Drawing draw(int index, BooleanSupplier stop) throws SheetException {
            int page = index + 1;
            JobSheet sheet = sheets.stream().filter(s -> s.holds(page)).findFirst().orElseThrow();
            return file(sheet).draw(page - sheet.firstPage() + 1, stop).asPage(page);
        }

        private SheetFile file(JobSheet sheet) throws SheetException {
            if (openIndex != sheet.index()) {
                close();
                open = SheetFile.open(bytes.get(sheet.index()), sheet.fileName(), passwords.get(sheet.index()));
                openIndex = sheet.index();
            }
            return open;
        }

        @Override
        public void close() {
            if (open != null) {
                open.close();
                open = null;
                openIndex = -1;
            }
        }
    }
}
