// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.List;
import java.util.Map;

/**
 * Letters of another hand than the reader's alphabet: drawn on a grid of four by six as an engraver with a straight
 * point would, all curves as bevels. Capitals are one high.
 */
final class Writing {

    private static final Map<Character, String> LETTERS = Map.ofEntries(
            Map.entry('A', "0,0 0,4 1,6 3,6 4,4 4,0|0,2.5 4,2.5"), Map.entry('B', "0,0 0,6 3,6 4,5 4,4 3,3.2 0,3.2|3,3.2 4,2.2 4,1 3,0 0,0"),
            Map.entry('C', "4,5 3,6 1,6 0,5 0,1 1,0 3,0 4,1"), Map.entry('D', "0,0 0,6 2.5,6 4,4.5 4,1.5 2.5,0 0,0"),
            Map.entry('E', "4,6 0,6 0,0 4,0|0,3.2 3,3.2"), Map.entry('F', "4,6 0,6 0,0|0,3.2 3,3.2"),
            Map.entry('G', "4,5 3,6 1,6 0,5 0,1 1,0 3,0 4,1 4,2.8 2.5,2.8"), Map.entry('H', "0,0 0,6|4,0 4,6|0,3 4,3"),
            Map.entry('I', "0,0 0,6"), Map.entry('K', "0,0 0,6|4,6 0,2.5|1.2,3.4 4,0"), Map.entry('L', "0,6 0,0 4,0"),
            Map.entry('M', "0,0 0,6 2.4,2 4.8,6 4.8,0"), Map.entry('N', "0,0 0,6 4,0 4,6"),
            Map.entry('O', "1.2,6 3.4,6 4.6,4.8 4.6,1.2 3.4,0 1.2,0 0,1.2 0,4.8 1.2,6"), Map.entry('P', "0,0 0,6 3,6 4,5 4,3.8 3,2.8 0,2.8"),
            Map.entry('Q', "1.2,6 3.4,6 4.6,4.8 4.6,1.2 3.4,0 1.2,0 0,1.2 0,4.8 1.2,6|2.8,1.4 4.8,-0.4"),
            Map.entry('R', "0,0 0,6 3,6 4,5 4,4 3,3 0,3|2,3 4,0"), Map.entry('S', "4,5.2 3.2,6 0.8,6 0,5.2 0,3.9 0.8,3.2 3.2,2.8 4,2.1 4,0.8 3.2,0 0.8,0 0,0.8"),
            Map.entry('T', "0,6 4,6|2,6 2,0"), Map.entry('U', "0,6 0,1.2 1,0 3,0 4,1.2 4,6"), Map.entry('V', "0,6 2,0 4,6"),
            Map.entry('W', "0,6 1.3,0 2.6,5 3.9,0 5.2,6"), Map.entry('X', "0,0 4,6|0,6 4,0"), Map.entry('Y', "0,6 2,3 4,6|2,3 2,0"),
            Map.entry('0', "1,6 2.6,6 3.6,4.9 3.6,1.1 2.6,0 1,0 0,1.1 0,4.9 1,6"), Map.entry('1', "0,4.6 1.4,6 1.4,0"),
            Map.entry('2', "0,4.9 1,6 2.8,6 3.8,5 3.8,4 0,0 3.8,0"), Map.entry('3', "0,5.2 0.8,6 3,6 3.8,5.2 3.8,3.8 3,3.1 1.4,3.1|3,3.1 3.8,2.3 3.8,0.8 3,0 0.8,0 0,0.8"),
            Map.entry('4', "3,0 3,6 0,2 4,2"), Map.entry('5', "3.7,6 0.3,6 0,3.3 0.8,3.7 2.7,3.7 3.7,2.8 3.7,0.9 2.7,0 0.9,0 0,0.7"),
            Map.entry('6', "3.2,5.6 2.6,6 1.4,6 0,4.4 0,1 0.9,0 2.8,0 3.7,1 3.7,2.6 2.8,3.5 0.9,3.5 0,2.6"), Map.entry('7', "0,6 3.8,6 1.2,0"),
            Map.entry('8', "1,3.2 0.2,4 0.2,5.2 1,6 2.8,6 3.6,5.2 3.6,4 2.8,3.2 1,3.2 0,2.2 0,0.9 0.9,0 2.9,0 3.8,0.9 3.8,2.2 2.8,3.2"),
            Map.entry('9', "0.5,0.4 1.1,0 2.3,0 3.7,1.6 3.7,5 2.8,6 0.9,6 0,5 0,3.4 0.9,2.5 2.8,2.5 3.7,3.4"), Map.entry('_', "0,-0.6 4,-0.6"));

    private Writing() {
    }

    /** The lines of a letter, corners in capital heights. */
    static List<double[][]> of(char letter) {
        return List.of(LETTERS.get(letter).split("\\|")).stream().map(line -> List.of(line.split(" ")).stream()
                .map(p -> new double[] {Double.parseDouble(p.split(",")[0]) / 6, Double.parseDouble(p.split(",")[1]) / 6})
                .toArray(double[][]::new)).toList();
    }
}
