// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

import org.probeleaf.schematic.netlist.Netlist;

/**
 * The netlist document: one JSON object, UTF-8, that names its {@code format} ({@code "probeleaf-netlist"}) and
 * {@code version}. Lengths are PDF points from the top left of the page as displayed and are written to a thousandth
 * of a point; writing what was read gives the same document again.
 *
 * <p>Over what the format asks for, a document of ours lists the drawn {@code units} of each part. A reader leaves
 * keys aside that it does not know, and makes do without what can be had from the rest: a part without
 * {@code units} is in one piece, a net without {@code pages} is on the pages of its wires and labels, a net that only
 * pins speak of has no lines.
 *
 * <p>No state; any thread may use it.
 */
public final class NetlistJson {

    /** What {@code format} says in a netlist document. */
    public static final String FORMAT = "probeleaf-netlist";

    /** The version written, and the newest that is read. */
    public static final int VERSION = 1;

    private NetlistJson() {
    }

    /**
     * Writes a netlist document.
     *
     * @param netlist what to write
     * @param out     flushed, not closed
     * @throws IOException where {@code out} fails
     */
    public static void write(Netlist netlist, OutputStream out) throws IOException {
        NetlistWriter.write(netlist, out);
    }

    /**
     * Reads a netlist document.
     *
     * @param in read to the end of the document, not closed
     * @return the netlist
     * @throws IOException where {@code in} fails or holds no netlist document; the message is one line for a person
     */
    public static Netlist read(InputStream in) throws IOException {
        return NetlistReader.read(in);
    }
}
