// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** Takes away what a PDF's fonts say about which letters they have. */
final class Unnamed {

    private Unnamed() {
    }

    /** The same sheet whose fonts have no map to Unicode. */
    static byte[] withoutMaps(byte[] pdf) throws IOException {
        return changed(pdf, (document, font) -> font.removeItem(COSName.TO_UNICODE));
    }

    /** The same sheet whose fonts say that every letter is one and the same character. */
    static byte[] mappedTo(byte[] pdf, char character) throws IOException {
        String map = "/CIDInit /ProcSet findresource begin 12 dict begin begincmap /CMapName /A def /CMapType 2 def\n"
                + "1 begincodespacerange <0000> <FFFF> endcodespacerange\n";
        StringBuilder ranges = new StringBuilder(map);
        for (int i = 0; i < 16; i++) {
            ranges.append("64 beginbfchar\n");
            for (int k = 64 * i; k < 64 * (i + 1); k++) {
                ranges.append(String.format("<%04X> <%04X>%n", k, (int) character));
            }
            ranges.append("endbfchar\n");
        }
        ranges.append("endcmap CMapName currentdict /CMap defineresource pop end end\n");
        return changed(pdf, (document, font) -> {
            COSStream stream = document.getDocument().createCOSStream();
            try (OutputStream out = stream.createOutputStream()) {
                out.write(ranges.toString().getBytes(StandardCharsets.US_ASCII));
            }
            font.setItem(COSName.TO_UNICODE, stream);
        });
    }

    /** Does something to a font. */
    private interface Change {
        void apply(PDDocument document, COSDictionary font) throws IOException;
    }

    private static byte[] changed(byte[] pdf, Change change) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                COSDictionary fonts = page.getResources().getCOSObject().getCOSDictionary(COSName.FONT);
                for (COSName name : fonts.keySet()) {
                    change.apply(document, fonts.getCOSDictionary(name));
                }
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }
}
