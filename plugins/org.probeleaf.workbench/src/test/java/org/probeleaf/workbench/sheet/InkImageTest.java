// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.eclipse.swt.graphics.ImageData;
import org.junit.jupiter.api.Test;
import org.probeleaf.drawing.Raster;

class InkImageTest {

    @Property
    void of_anyColour_overWhiteGivesTheColourAgain(@ForAll @IntRange(max = 0xFFFFFF) int rgb) {
        ImageData ink = InkImage.of(new Raster(1, 1, new int[] {0xFF000000 | rgb}));
        for (int i = 0; i < 3; i++) {
            int wanted = rgb >> 16 - 8 * i & 0xFF;
            int alpha = ink == null ? 0 : ink.alphaData[0] & 0xFF;
            int strong = ink == null ? 0 : ink.data[1 + i] & 0xFF;
            double shown = 255 - alpha / 255.0 * (255 - strong);
            assertEquals(wanted, shown, 1.01, "channel " + i);
        }
    }

    @Test
    void of_blankPaper_isNothing() {
        assertNull(InkImage.of(new Raster(2, 1, new int[] {0xFFFFFFFF, 0xFFFFFFFF})));
    }
}
