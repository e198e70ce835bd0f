// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.speed;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.probeleaf.benchmark.sheet.MadeSheet;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.recognition.PageSource;
import org.probeleaf.recognition.Progress;
import org.probeleaf.recognition.Recogniser;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

/** Reads a made sheet and holds it against what it was made from. */
public final class MadeReading {

    private MadeReading() {
    }

    /** Reads it, all pages. */
    public static Netlist read(byte[] pdf) throws SheetException {
        try (SheetFile file = SheetFile.open(pdf, "made.pdf", null)) {
            List<Integer> pages = IntStream.rangeClosed(1, file.pageCount()).boxed().toList();
            return new Recogniser().recognise(file.name(), "", PageSource.of(file, pages, null), Progress.NONE);
        }
    }

    /** How many of the nets that were drawn were read exactly; the pins of a resistor are not told apart. */
    public static int exact(MadeSheet made, Netlist netlist) {
        Set<String> read = netlist.nets().stream().map(n -> pins(n, netlist)).collect(Collectors.toSet());
        return (int) made.nets().stream().filter(n -> read.contains(pins(n))).count();
    }

    private static String pins(Net net, Netlist netlist) {
        TreeSet<String> pins = new TreeSet<>();
        for (Part part : netlist.parts()) {
            for (Pin pin : part.pins()) {
                if (net.id().equals(pin.net())) {
                    pins.add(part.ref() + "." + (part.ref().startsWith("R") ? "" : pin.number()));
                }
            }
        }
        return String.join(" ", pins);
    }

    private static String pins(List<String> net) {
        return net.stream().map(p -> p.startsWith("R") ? p.substring(0, p.indexOf('.') + 1) : p)
                .collect(Collectors.toCollection(TreeSet::new)).stream().collect(Collectors.joining(" "));
    }
}
