// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.checksum;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** Checksums of files (SHA-256, FIPS 180-4). */
public final class Sha256 {

    private Sha256() {
    }

    /** The SHA-256 of the given pieces one after the other, lower-case hexadecimal. */
    public static String of(List<byte[]> pieces) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            pieces.forEach(digest::update);
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The SHA-256 of the bytes, lower-case hexadecimal. */
    public static String of(byte[] bytes) {
        return of(List.of(bytes));
    }
}
