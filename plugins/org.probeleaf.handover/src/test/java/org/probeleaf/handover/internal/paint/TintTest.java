// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

class TintTest {

    /** Contrast on white as WCAG 2.2 defines it; graphics need 3, text 4.5. */
    private static double contrast(Tint tint) {
        return 1.05 / (luminance(tint) + 0.05);
    }

    private static double luminance(Tint t) {
        return 0.2126 * linear(t.red()) + 0.7152 * linear(t.green()) + 0.0722 * linear(t.blue());
    }

    private static double linear(double c) {
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    @Test
    void tint_ofSigns_standsOutOnPaper() {
        for (Sign sign : Sign.values()) {
            assertTrue(contrast(sign.tint()) >= 3, sign + " " + contrast(sign.tint()));
        }
        assertTrue(contrast(Tint.BLUE) >= 4.5, "white letters on a blue tag");
    }

    @Test
    void shape_ofSigns_tellsThemApartWithoutColour() {
        assertEquals(Sign.values().length,
                Arrays.stream(Sign.values()).map(Sign::shape).distinct().count());
    }

    /** The reference palette, where the folder with it is at hand. */
    @Test
    void components_everyTint_areThoseOfThePalette() throws IOException {
        Path palette = Path.of(System.getProperty("probeleaf.shared", ""), "reference", "palette.json");
        Assumptions.assumeTrue(Files.exists(palette), "skipped: no palette at " + palette);
        String json = Files.readString(palette);
        for (Tint tint : Tint.values()) {
            if (tint == Tint.WHITE) {
                continue;
            }
            Matcher m = Pattern.compile("\"" + tint.title() + "\": \\{\\s*\"hex\": \"(#[0-9A-F]{6})\"").matcher(json);
            assertTrue(m.find(), tint.title());
            assertEquals(m.group(1), String.format("#%02X%02X%02X", Math.round(tint.red() * 255),
                    Math.round(tint.green() * 255), Math.round(tint.blue() * 255)));
        }
    }
}
