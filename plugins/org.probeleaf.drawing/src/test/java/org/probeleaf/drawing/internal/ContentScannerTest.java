// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.junit.jupiter.api.Test;
import org.probeleaf.drawing.internal.ContentScanner.Token;

/** The syntax of ISO 32000-1 clause 7.2 to 7.3 and 8.9.7. */
class ContentScannerTest {

    @Test
    void next_numbers_areReadAsWritten() {
        assertEquals(List.of(1.0, -2.5, 0.75, 34.5, 0.0, 5.0, 0.00001), numbers("1 -2.5 +.75 34.5 -.0 5. .00001"));
    }

    @Test
    void next_numbersThatAreNone_areForgivenAndStayFinite() {
        assertEquals(List.of(12.0, 1.2, -3.0, 0.0), numbers("12-34 1.2.3 --3 -"));
        assertEquals(List.of(1e12, -1e12), numbers("99999999999999999999999 -340000000000000000000000000000"));
        assertEquals(List.of(0.123456789012345678), numbers("0.123456789012345678901234567890"));
    }

    @Test
    void next_operatorsAndComments_areToldApart() {
        assertEquals(List.of("q", "re", "f*", "Q", "strange"), operators("q%not this Q\nre f*\rQ strange"));
        assertEquals(List.of("m", "l", "S"), operators("0 0 m/Name l(text)S"));
    }

    @Test
    void next_strings_areUnescaped() {
        assertArrayEquals("a(b)c\n(A".getBytes(StandardCharsets.ISO_8859_1), bytes("(a(b)c\\n\\(\\101)"));
        assertArrayEquals("two lines".getBytes(StandardCharsets.ISO_8859_1), bytes("(two\\\n lines)"));
        assertArrayEquals(new byte[] {0x4E, (byte) 0xF0}, bytes("<4E F>"));
        assertArrayEquals("open".getBytes(StandardCharsets.ISO_8859_1), bytes("(open"));
    }

    @Test
    void next_namesArraysAndDictionaries_areNested() {
        ContentScanner scanner = scanner("/A#20b [1 [/C (d)] null] << /E << /F 2.5 >> /G [true] >>");
        assertEquals(Token.OPERAND, scanner.next());
        assertEquals(COSName.getPDFName("A b"), scanner.operand());
        assertEquals(Token.OPERAND, scanner.next());
        COSArray array = (COSArray) scanner.operand();
        assertEquals(3, array.size());
        assertEquals(2, ((COSArray) array.get(1)).size());
        assertEquals(Token.OPERAND, scanner.next());
        COSDictionary dictionary = (COSDictionary) scanner.operand();
        assertEquals(2.5f, dictionary.getCOSDictionary(COSName.getPDFName("E")).getFloat("F"));
        assertEquals(1, dictionary.getCOSArray(COSName.getPDFName("G")).size());
        assertEquals(Token.END, scanner.next());
    }

    @Test
    void next_hundredThousandOpenArrays_comeToAnEnd() {
        assertEquals(Token.OPERAND, scanner("[".repeat(100_000)).next());
    }

    @Test
    void inlinePicture_dataThatLookLikeAnEnd_areSkippedByTheirLength() {
        ContentScanner scanner = scanner("BI /W 4 /H 2 /BPC 8 /CS /G ID EI q EI \nEI Q");
        assertEquals(Token.OPERATOR, scanner.next());
        COSDictionary picture = scanner.inlinePicture();
        assertEquals(4, picture.getInt(COSName.W));
        assertEquals(Token.OPERATOR, scanner.next());
        assertEquals("Q", scanner.operator());
    }

    @Test
    void inlinePicture_packedData_endAtAnEndThatReadsOn() {
        ContentScanner scanner = scanner("BI /W 4 /H 2 /F /Fl ID abc EI \u0001\u0002 EI Q");
        scanner.next();
        scanner.inlinePicture();
        assertEquals(Token.OPERATOR, scanner.next());
        assertEquals("Q", scanner.operator());
    }

    private static ContentScanner scanner(String content) {
        return new ContentScanner(content.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static byte[] bytes(String content) {
        ContentScanner scanner = scanner(content);
        assertEquals(Token.OPERAND, scanner.next());
        COSBase operand = scanner.operand();
        return ((COSString) operand).getBytes();
    }

    private static List<Double> numbers(String content) {
        ContentScanner scanner = scanner(content);
        List<Double> numbers = new ArrayList<>();
        while (scanner.next() == Token.NUMBER) {
            numbers.add(scanner.number() + 0.0);
        }
        return numbers;
    }

    private static List<String> operators(String content) {
        ContentScanner scanner = scanner(content);
        List<String> operators = new ArrayList<>();
        for (Token t = scanner.next(); t != Token.END; t = scanner.next()) {
            if (t == Token.OPERATOR) {
                operators.add(scanner.operator());
            }
        }
        return operators;
    }
}
