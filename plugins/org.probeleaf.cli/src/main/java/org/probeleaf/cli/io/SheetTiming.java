// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

/**
 * How long a page took, in seconds of the wall clock.
 *
 * @param file      as the person named it
 * @param page      1-based
 * @param open      opening the file, told of its first page; 0 for the others
 * @param draw      taking the page apart
 * @param recognise reading it; what joins the pages is told of the last
 */
public record SheetTiming(String file, int page, double open, double draw, double recognise) {

    public double total() {
        return open + draw + recognise;
    }
}
