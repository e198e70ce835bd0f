// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.picture;

/**
 * How a camera was held, by the tag Orientation (0x0112) of EXIF in a JPEG: 1 to 8 (Exif 2.3, 4.6.4; from memory).
 *
 * @param code 1 for upright
 */
record Orientation(int code) {

    private static final int TAG = 0x0112;
    private static final int APP1 = 0xe1;
    private static final int SCAN = 0xda;

    /** Of a file; upright where nothing is said. */
    static Orientation of(byte[] file) {
        try {
            int at = 2;
            while (at + 4 <= file.length && (file[at] & 0xff) == 0xff && (file[at + 1] & 0xff) != SCAN) {
                int length = two(file, at + 2, true);
                if ((file[at + 1] & 0xff) == APP1 && file[at + 4] == 'E' && file[at + 5] == 'x') {
                    return new Orientation(tag(file, at + 10));
                }
                at += 2 + length;
            }
        } catch (ArrayIndexOutOfBoundsException e) {
            // A damaged head says nothing of the orientation; whether the picture can be read is seen later.
        }
        return new Orientation(1);
    }

    private static int tag(byte[] file, int tiff) {
        boolean big = file[tiff] == 'M';
        int directory = tiff + (two(file, tiff + 4, big) << 16) + two(file, tiff + 6, big);
        if (!big) {
            directory = tiff + two(file, tiff + 4, false) + (two(file, tiff + 6, false) << 16);
        }
        int entries = two(file, directory, big);
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + 12 * i;
            if (two(file, entry, big) == TAG) {
                int value = two(file, entry + 8, big);
                return value >= 1 && value <= 8 ? value : 1;
            }
        }
        return 1;
    }

    private static int two(byte[] file, int at, boolean big) {
        int a = file[at] & 0xff;
        int b = file[at + 1] & 0xff;
        return big ? a << 8 | b : b << 8 | a;
    }

    /** The picture as it is to be seen. */
    Picture upright(Picture p) {
        if (code == 1) {
            return p;
        }
        boolean turned = code >= 5;
        int w = turned ? p.height() : p.width();
        int h = turned ? p.width() : p.height();
        int[] out = new int[w * h];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                out[y * w + x] = p.rgb()[from(p, x, y)];
            }
        }
        return new Picture(w, h, out);
    }

    /** The index in the file's picture of what is seen at a place. */
    private int from(Picture p, int x, int y) {
        int right = p.width() - 1;
        int bottom = p.height() - 1;
        return switch (code) {
            case 2 -> y * p.width() + right - x;
            case 3 -> (bottom - y) * p.width() + right - x;
            case 4 -> (bottom - y) * p.width() + x;
            case 5 -> x * p.width() + y;
            case 6 -> (bottom - x) * p.width() + y;
            case 7 -> (bottom - x) * p.width() + right - y;
            case 8 -> x * p.width() + right - y;
            default -> y * p.width() + x;
        };
    }
}
