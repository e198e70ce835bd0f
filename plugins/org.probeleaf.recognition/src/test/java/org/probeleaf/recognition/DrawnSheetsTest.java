// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

/**
 * Sheets drawn from netlists of ours by a program of others are read exactly; the README beside them tells how they
 * were made.
 */
class DrawnSheetsTest {

    @ParameterizedTest
    @ValueSource(strings = {"divider-chain", "ladder", "chips-in-a-row", "star", "loop"})
    void recognise_sheetDrawnByAnotherProgram_isExact(String name) throws IOException, URISyntaxException {
        List<List<String[]>> truth = truth(name);
        Map<String, Integer> pins = new HashMap<>();
        truth.forEach(net -> net.forEach(p -> pins.merge(p[0], 1, Integer::sum)));
        TreeSet<String> expected = new TreeSet<>();
        truth.forEach(net -> expected.add(line(net, pins)));
        Netlist netlist;
        Path sheet = Path.of(DrawnSheetsTest.class.getResource("drawn/" + name + ".pdf").toURI());
        try (SheetFile file = SheetFile.open(sheet, null)) {
            netlist = Reading.read(file.draw(1));
        }

        Map<String, List<String[]>> read = new TreeMap<>();
        for (Part part : netlist.parts()) {
            for (Pin pin : part.pins()) {
                if (pin.net() != null) {
                    read.computeIfAbsent(pin.net(), k -> new ArrayList<>()).add(new String[] {part.ref(), pin.label()});
                }
            }
        }
        TreeSet<String> found = new TreeSet<>();
        read.values().stream().filter(net -> net.size() > 1).forEach(net -> found.add(line(net, pins)));
        assertEquals(String.join("\n", expected), String.join("\n", found));
    }

    /** A net as its pins in order; the pins of a part with two are not told apart. */
    private static String line(List<String[]> net, Map<String, Integer> pins) {
        return String.join(" ", net.stream().map(p -> pins.getOrDefault(p[0], 0) <= 2 ? p[0] : p[0] + "." + p[1]).sorted().toList());
    }

    /** The nets of the circuit, each a list of designator and pin. */
    private static List<List<String[]>> truth(String name) throws IOException {
        List<List<String[]>> nets = new ArrayList<>();
        try (InputStream in = DrawnSheetsTest.class.getResourceAsStream("drawn/" + name + ".json");
                JsonParser json = new JsonFactory().createParser(in)) {
            List<String> pin = null;
            int depth = 0;
            for (JsonToken t = json.nextToken(); t != null; t = json.nextToken()) {
                if (t == JsonToken.START_ARRAY) {
                    depth++;
                    if (depth == 2) {
                        nets.add(new ArrayList<>());
                    }
                    pin = depth == 3 ? new ArrayList<>() : null;
                } else if (t == JsonToken.END_ARRAY) {
                    if (depth == 3) {
                        nets.get(nets.size() - 1).add(pin.toArray(String[]::new));
                    }
                    depth--;
                } else if (t == JsonToken.VALUE_STRING && depth == 3) {
                    pin.add(json.getText());
                }
            }
        }
        return nets;
    }
}
