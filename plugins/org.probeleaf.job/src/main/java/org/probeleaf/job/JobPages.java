// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.util.List;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.recognition.PageFeed;

/** Draws the pages of a job's sheet files in order, one file open at a time. One thread at a time may use it. */
final class JobPages implements PageFeed.Source, AutoCloseable {

    private final List<JobSheet> sheets;
    private final List<byte[]> bytes;
    private final List<String> passwords;
    private SheetFile open;
    private int openIndex = -1;

    /**
     * @param sheets    the sheet files, in order
     * @param bytes     of each
     * @param passwords of each, null where it needs none
     */
    JobPages(List<JobSheet> sheets, List<byte[]> bytes, List<String> passwords) {
        this.sheets = sheets;
        this.bytes = bytes;
        this.passwords = passwords;
    }

    /** A page under its number in the job. */
    @Override
    public Drawing draw(int index) throws SheetException {
        int page = index + 1;
        JobSheet sheet = sheets.stream().filter(s -> s.holds(page)).findFirst().orElseThrow();
        Drawing d = file(sheet).draw(page - sheet.firstPage() + 1);
        return d.asPage(page);
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
