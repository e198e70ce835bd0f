// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

import org.probeleaf.example.tl8.ink.PdfPainter;
import org.probeleaf.example.tl8.ink.Typeface;
import org.probeleaf.example.tl8.sheet.DrawingRules;
import org.probeleaf.example.tl8.sheet.Inking;
import org.probeleaf.example.tl8.sheet.Page;
import org.probeleaf.example.tl8.sheet.TrueNetlist;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Netlist;

/** Draws the TL-8's sheet and writes the netlist it was drawn from. The same bytes come out on every run. */
public final class TideLogger {
    /** Name of the drawn file. */
    public static final String PDF = "tern-tl8.pdf";
    /** Name of the netlist file. */
    public static final String JSON = "tern-tl8.json";

    private final List<Page> pages = List.of(CpuPage.draw(), PortPage.draw());
    private final Typeface typeface = Typeface.load();

    /** Whatever is wrong with the drawing; empty when it is clean. */
    public List<String> faults() {
        return DrawingRules.faults(pages, typeface);
    }

    /** The sheet as a PDF file. */
    public byte[] pdf() throws IOException {
        return new PdfPainter(typeface).paint("TL-8 harbour tide logger, main board",
                pages.stream().map(p -> Inking.of(p, typeface)).toList());
    }

    /** The netlist that the sheet was drawn from. */
    public Netlist netlist() throws IOException {
        return TrueNetlist.of(PDF, sha256(pdf()), pages);
    }

    /** The true netlist as a netlist document. */
    public byte[] json() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        NetlistJson.write(netlist(), out);
        return out.toByteArray();
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java has no SHA-256", e);
        }
    }

    /**
     * Writes both files.
     *
     * @param args the folder to write to
     */
    public static void main(String[] args) throws IOException {
        if (args.length != 1) {
            throw new IllegalArgumentException("give one folder to write " + PDF + " and " + JSON + " to");
        }
        TideLogger logger = new TideLogger();
        Path folder = Files.createDirectories(Path.of(args[0]));
        Files.write(folder.resolve(PDF), logger.pdf());
        Files.write(folder.resolve(JSON), logger.json());
        StrobeCapture.write(folder);
        if (!logger.faults().isEmpty()) {
            throw new IllegalStateException("the drawing has faults:\n" + String.join("\n", logger.faults()));
        }
    }
}
