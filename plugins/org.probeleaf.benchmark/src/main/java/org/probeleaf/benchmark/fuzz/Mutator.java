// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.fuzz;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

/**
 * Makes damaged PDFs out of good ones. The same seed and number make the same file, in any process and order.
 *
 * @param seeds the good files
 * @param seed  makes other files
 */
record Mutator(List<byte[]> seeds, long seed) {

    private static final double LARGE = 200_000;

    /** A damaged file and what was done to it. */
    record Mutant(byte[] bytes, String how) {
    }

    /** The file with the given number. */
    Mutant mutant(int number) {
        Random random = new Random(seed * 1_000_003L + number);
        // Random needs a few draws before seeds that lie close together part.
        for (int i = 0; i < 4; i++) {
            random.nextInt();
        }
        byte[] source = source(random);
        Mutant mutant = random.nextInt(10) < 3 ? raw(source, random) : StructureMutator.mutate(source, random);
        if (random.nextInt(8) == 0) {
            Mutant again = raw(mutant.bytes(), random);
            return new Mutant(again.bytes(), mutant.how() + ", " + again.how());
        }
        return mutant;
    }

    /** A good file; large ones come up less often, or they would take all the time. */
    private byte[] source(Random random) {
        while (true) {
            byte[] candidate = seeds.get(random.nextInt(seeds.size()));
            if (random.nextDouble() < LARGE / Math.max(LARGE, candidate.length)) {
                return candidate;
            }
        }
    }

    private static Mutant raw(byte[] source, Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> new Mutant(flipped(source, random, 1 + random.nextInt(4)), "few bytes");
            case 1 -> new Mutant(flipped(source, random, 20 + random.nextInt(200)), "many bytes");
            case 2 -> new Mutant(cut(source, random), "cut");
            case 3 -> new Mutant(moved(source, random, false), "piece moved");
            case 4 -> new Mutant(moved(source, random, true), "piece doubled");
            default -> new Mutant(otherDigits(source, random), "digits");
        };
    }

    private static byte[] flipped(byte[] source, Random random, int count) {
        byte[] bytes = source.clone();
        for (int i = 0; i < count && bytes.length > 0; i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    /** Cuts a file; most get an end, or they would all be refused for the same reason. */
    private static byte[] cut(byte[] source, Random random) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(source, 0, random.nextInt(source.length + 1));
        if (random.nextInt(4) > 0) {
            out.writeBytes("\nstartxref\n0\n%%EOF\n".getBytes(StandardCharsets.ISO_8859_1));
        }
        return out.toByteArray();
    }

    private static byte[] moved(byte[] source, Random random, boolean keep) {
        int from = random.nextInt(source.length);
        int length = Math.min(source.length - from, 1 + random.nextInt(4000));
        int to = random.nextInt(source.length);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (int i = 0; i < source.length; i++) {
            if (i == to) {
                out.write(source, from, length);
            }
            if (keep || i < from || i >= from + length) {
                out.write(source[i]);
            }
        }
        return out.toByteArray();
    }

    /** Other digits in numbers outside streams as well as inside: lengths, counts, references, offsets. */
    private static byte[] otherDigits(byte[] source, Random random) {
        byte[] bytes = source.clone();
        for (int k = 0; k < 8; k++) {
            int at = random.nextInt(bytes.length);
            while (at < bytes.length && (bytes[at] < '0' || bytes[at] > '9')) {
                at++;
            }
            while (at < bytes.length && bytes[at] >= '0' && bytes[at] <= '9') {
                bytes[at++] = (byte) (random.nextBoolean() ? '9' : '0' + random.nextInt(10));
            }
        }
        return bytes;
    }
}
