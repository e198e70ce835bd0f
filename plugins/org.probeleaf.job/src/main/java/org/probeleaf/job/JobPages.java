// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.recognition.PageSource;
import org.probeleaf.recognition.Progress;
import org.probeleaf.recognition.Recogniser;
import org.probeleaf.schematic.checksum.Sha256;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;

/**
 * The pages of a job's sheet files under their numbers in the job. Each thread that draws has one file open at a time.
 *
 * @param sheets    the sheet files, in order
 * @param bytes     of each
 * @param passwords of each, null where it needs none
 */
record JobPages(List<JobSheet> sheets, List<byte[]> bytes, List<String> passwords) implements PageSource {

    /** As {@link Job#recognise}. */
    static Netlist recognise(Job job, PartBook book, Progress progress) throws JobException {
        List<JobSheet> sheets = job.state().sheets();
        List<byte[]> all = new ArrayList<>();
        List<String> passwords = new ArrayList<>();
        for (JobSheet sheet : sheets) {
            all.add(job.sheetBytes(sheet.index()));
            passwords.add(job.sheetPassword(sheet.index()));
        }
        String names = sheets.stream().map(JobSheet::fileName).collect(Collectors.joining(", "));
        try {
            return new Recogniser(book).recognise(names, Sha256.of(all), new JobPages(sheets, all, passwords), progress);
        } catch (SheetException e) {
            throw new JobException(JobException.Problem.SHEET, e.getMessage(), e);
        }
    }

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
