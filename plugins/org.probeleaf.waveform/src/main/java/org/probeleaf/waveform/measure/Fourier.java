// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

/** The discrete Fourier transform of a power of two of values, by Cooley and Tukey (1965). */
public final class Fourier {

    private Fourier() {
    }

    /**
     * Transforms in place: {@code X[k] = sum x[n] exp(-2 pi i k n / N)}.
     *
     * @param re real parts; a power of two of them
     * @param im imaginary parts, as many
     */
    public static void forward(double[] re, double[] im) {
        int n = re.length;
        if (Integer.bitCount(n) != 1 || im.length != n) {
            throw new IllegalArgumentException("a transform needs a power of two of values");
        }
        for (int i = 1, j = 0; i < n; i++) {
            int bit = n >> 1;
            for (; (j & bit) != 0; bit >>= 1) {
                j ^= bit;
            }
            j ^= bit;
            if (i < j) {
                swap(re, i, j);
                swap(im, i, j);
            }
        }
        for (int size = 2; size <= n; size <<= 1) {
            stage(re, im, size);
        }
    }

    private static void stage(double[] re, double[] im, int size) {
        int half = size / 2;
        for (int k = 0; k < half; k++) {
            double angle = -2 * Math.PI * k / size;
            double c = Math.cos(angle);
            double s = Math.sin(angle);
            for (int a = k; a < re.length; a += size) {
                int b = a + half;
                double xr = re[b] * c - im[b] * s;
                double xi = re[b] * s + im[b] * c;
                re[b] = re[a] - xr;
                im[b] = im[a] - xi;
                re[a] += xr;
                im[a] += xi;
            }
        }
    }

    private static void swap(double[] x, int i, int j) {
        double t = x[i];
        x[i] = x[j];
        x[j] = t;
    }

    /** The way back: values of which {@code re} and {@code im} are the transform. */
    public static void inverse(double[] re, double[] im) {
        forward(im, re);
        for (int i = 0; i < re.length; i++) {
            re[i] /= re.length;
            im[i] /= re.length;
        }
    }
}
