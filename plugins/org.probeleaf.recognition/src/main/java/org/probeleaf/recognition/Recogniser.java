// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.recognition.page.NetlistBuilder;
import org.probeleaf.recognition.page.PageReading;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Sheet;

/** Reads drawings. Instances have no state; any thread may use them. */
public final class Recogniser {

    /**
     * Reads the pages of a drawing.
     *
     * @param file     name of the sheet file, without folders
     * @param sha256   of its bytes, lower-case hexadecimal
     * @param drawings its pages, by rising number
     * @param progress hears of each page
     * @return the netlist
     * @throws CancellationException where {@code progress} says to stop
     */
    public Netlist recognise(String file, String sha256, List<Drawing> drawings, Progress progress) {
        List<Sheet> sheets = new ArrayList<>();
        List<PageReading> readings = new ArrayList<>();
        for (Drawing d : drawings) {
            if (progress.cancelled()) {
                throw new CancellationException("the recognition was stopped");
            }
            sheets.add(new Sheet(d.page(), d.width(), d.height(), d.kind()));
            readings.add(PageReading.of(d));
            progress.pagesDone(readings.size(), drawings.size());
        }
        return new NetlistBuilder(readings).build(file, sha256, sheets);
    }
}
