// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MinMaxPyramidTest {

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 15, 16, 17, 255, 256, 257, 5000, 70_001})
    void range_ofAnyStretch_isThatOfItsSamples(int size) {
        Random random = new Random(size);
        double[] values = random.doubles(size, -5, 5).toArray();
        MinMaxPyramid pyramid = new MinMaxPyramid(Samples.of(values));
        for (int k = 0; k < 200; k++) {
            int a = random.nextInt(size + 1);
            int b = random.nextInt(size + 1);
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = a; i < b; i++) {
                low = Math.min(low, values[i]);
                high = Math.max(high, values[i]);
            }
            double[] range = pyramid.range(a, b);
            if (a >= b) {
                assertTrue(Double.isNaN(range[0]) && Double.isNaN(range[1]));
            } else {
                assertEquals(low, range[0], 1e-6);
                assertEquals(high, range[1], 1e-6);
                assertTrue(range[0] <= low && range[1] >= high);
            }
        }
    }

    @Test
    void range_missingSamples_areLeftOut() {
        double[] values = new double[100];
        java.util.Arrays.fill(values, Double.NaN);
        values[40] = 3;
        MinMaxPyramid pyramid = new MinMaxPyramid(Samples.of(values));
        assertEquals(3, pyramid.range(0, 100)[0], 0);
        assertTrue(Double.isNaN(pyramid.range(41, 100)[1]));
    }

    @Test
    void builder_manyValues_keepsThemAll() {
        SampleBuilder builder = new SampleBuilder();
        int n = SampleBuilder.EXACT + 200_001;
        for (int i = 0; i < n; i++) {
            builder.add(i % 1000 / 8.0);
        }
        Samples samples = builder.build();
        assertEquals(n, samples.size());
        for (int i = 0; i < n; i += 777) {
            assertEquals(i % 1000 / 8.0, samples.get(i), 0);
        }
    }
}
