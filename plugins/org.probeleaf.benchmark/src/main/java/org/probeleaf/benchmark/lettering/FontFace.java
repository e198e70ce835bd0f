// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.lettering;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * A font that a library carries.
 *
 * @param family its design; what is learned from a family tells nothing about how well it is read itself
 * @param path   of the resource
 */
record FontFace(String family, String path) {

    private static final List<String> STYLES = List.of("Regular", "Bold", "Italic", "BoldItalic");
    private static final List<String> WEIGHTS = List.of("Light", "LightItalic", "SemiBold", "SemiBoldItalic");

    /** Those that the alphabet is made of; designs that most sheets are lettered in come first. */
    static List<FontFace> all() {
        List<FontFace> faces = new ArrayList<>();
        for (String design : List.of("Sans", "Serif", "Mono")) {
            add(faces, "Liberation " + design, "/liberation/Liberation" + design + "-", STYLES);
        }
        String dejaVu = "/net/sf/jasperreports/fonts/dejavu/DejaVu";
        for (String design : List.of("Sans", "SansMono", "Serif", "SansCondensed", "SerifCondensed")) {
            faces.add(new FontFace("DejaVu", dejaVu + design + ".ttf"));
            String slanted = design.startsWith("Serif") ? "Italic" : "Oblique";
            add(faces, "DejaVu", dejaVu + design + "-", List.of("Bold", slanted, "Bold" + slanted));
        }
        String ph = "/fonts/ttf/";
        add(faces, "Open Sans", ph + "OpenSans/OpenSans-", STYLES);
        add(faces, "Open Sans", ph + "OpenSans/OpenSans-", WEIGHTS);
        add(faces, "Roboto", ph + "Roboto/Roboto-", STYLES);
        add(faces, "Roboto", ph + "Roboto/Roboto-", List.of("Light", "LightItalic", "Medium", "MediumItalic"));
        add(faces, "Roboto", ph + "Roboto/RobotoCondensed-", STYLES);
        add(faces, "Source Sans", ph + "SourceSansPro/SourceSansPro-", STYLES);
        add(faces, "Source Sans", ph + "SourceSansPro/SourceSansPro-", WEIGHTS);
        add(faces, "Lato", "/com/mpobjects/jasperreports/fonts/lato/Lato-", STYLES);
        return List.copyOf(faces);
    }

    private static void add(List<FontFace> faces, String family, String stem, List<String> styles) {
        styles.forEach(s -> faces.add(new FontFace(family, stem + s + ".ttf")));
    }

    /** Reads it. */
    TrueTypeFont open() throws IOException {
        try (InputStream in = FontFace.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IOException("no library carries the font " + path);
            }
            return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
        }
    }
}
