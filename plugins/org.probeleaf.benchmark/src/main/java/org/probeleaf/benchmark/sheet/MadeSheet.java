// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A sheet of any number of parts with its netlist: rows of chips, joined by wires, by resistors between them, by tees
 * with dots down to the next row that cross other wires on their way, and by names, over all pages.
 *
 * @param pdf  the file
 * @param nets the pins of each net as {@code IC1.3}; the two pins of a resistor are {@code R1.1} and {@code R1.2}
 */
public record MadeSheet(byte[] pdf, List<List<String>> nets) {

    /**
     * Makes a sheet.
     *
     * @param parts how many parts on all pages
     * @param pages how many pages; each takes its share of the parts
     * @param seed  the same seed makes the same sheet
     */
    public static MadeSheet of(int parts, int pages, long seed) throws IOException {
        Random random = new Random(seed);
        Names names = new Names(random);
        NetModel model = new NetModel();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            for (int page = 0; page < pages; page++) {
                int share = parts * (page + 1) / pages - parts * page / pages;
                new PageMaker(document, model, names, random).draw(share);
            }
            names.rest().forEach((name, pins) -> model.join(pins));
            document.save(bytes);
        }
        return new MadeSheet(bytes.toByteArray(), model.nets());
    }

    /** Hands out names for wire ends so that each name stands at two of them, wherever they are. */
    static final class Names {

        private final Random random;
        private final List<String> open = new ArrayList<>();
        private final Map<String, List<String>> pins = new LinkedHashMap<>();
        private int count;

        private Names(Random random) {
            this.random = random;
        }

        /** A name for the wire at a pin: that of an earlier wire, or a new one. */
        String at(String pin) {
            boolean again = open.size() > 20 || !open.isEmpty() && random.nextBoolean();
            String name = again ? open.remove(random.nextInt(open.size())) : "S" + ++count;
            if (!again) {
                open.add(name);
            }
            pins.computeIfAbsent(name, k -> new ArrayList<>()).add(pin);
            return name;
        }

        private Map<String, List<String>> rest() {
            return pins;
        }
    }
}
