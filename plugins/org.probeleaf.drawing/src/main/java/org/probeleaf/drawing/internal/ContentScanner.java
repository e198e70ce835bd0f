// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSString;

/**
 * Cuts a content stream into numbers, other operands and operators (ISO 32000-1 clause 7.2 and 7.8.2). It forgives what
 * it can: what makes no sense is taken as an operator, which the caller does not know.
 */
final class ContentScanner {

    /** What {@link #next} found. */
    enum Token {
        NUMBER, OPERAND, OPERATOR, END
    }

    private static final int DEEPEST = 40;
    private static final double[] TENTHS = tenths();

    private final byte[] bytes;
    private int at;
    private double number;
    private boolean whole;
    private COSBase operand;
    private String operator;

    ContentScanner(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The number found last. */
    double number() {
        return number;
    }

    /** The number found last as an operand. */
    COSBase numberAsOperand() {
        return asOperand(number, whole);
    }

    /** Whether the number found last was written without a point. */
    boolean whole() {
        return whole;
    }

    static COSBase asOperand(double number, boolean whole) {
        return whole && Math.abs(number) <= Integer.MAX_VALUE ? COSInteger.get((long) number)
                : new COSFloat((float) number);
    }

    /** The operand found last: no number. */
    COSBase operand() {
        return operand;
    }

    String operator() {
        return operator;
    }

    Token next() {
        return next(0);
    }

    private Token next(int depth) {
        skipBlanks();
        if (at >= bytes.length) {
            return Token.END;
        }
        byte b = bytes[at];
        if (b >= '0' && b <= '9' || b == '-' || b == '+' || b == '.') {
            readNumber();
            return Token.NUMBER;
        }
        switch (b) {
            case '/' -> operand = readName();
            case '(' -> operand = new COSString(readString());
            case '[' -> operand = readArray(depth);
            case '<' -> operand = at + 1 < bytes.length && bytes[at + 1] == '<' ? readDictionary(depth)
                    : new COSString(readHex());
            case ']', '>', ')', '{', '}' -> {
                operator = String.valueOf((char) b);
                at++;
                return Token.OPERATOR;
            }
            default -> {
                return readWord();
            }
        }
        return Token.OPERAND;
    }

    private void skipBlanks() {
        while (at < bytes.length) {
            byte b = bytes[at];
            if (b == '%') {
                while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
                    at++;
                }
            } else if (isBlank(b)) {
                at++;
            } else {
                return;
            }
        }
    }

    /** A number; of signs and points too many the last digits are let go, as in {@code 12-34} or {@code 1.2.3}. */
    private void readNumber() {
        boolean negative = false;
        long digits = 0;
        int tenths = -1;
        boolean overlong = false;
        boolean begun = false;
        for (; at < bytes.length; at++) {
            byte b = bytes[at];
            if (b >= '0' && b <= '9') {
                begun = true;
                if (digits < 100_000_000_000_000_000L) {
                    digits = 10 * digits + b - '0';
                    tenths += tenths >= 0 ? 1 : 0;
                } else {
                    overlong |= tenths < 0;
                }
            } else if (b == '.' && tenths < 0) {
                tenths = 0;
            } else if ((b == '-' || b == '+') && !begun) {
                negative |= b == '-';
            } else if (b == '.' || b == '-' || b == '+') {
                skipNumberRest();
                break;
            } else {
                break;
            }
        }
        whole = tenths < 0 && !overlong;
        double value = tenths > 0 ? digits / TENTHS[Math.min(tenths, TENTHS.length - 1)] : digits;
        // Beyond any page, and still a number with which one can reckon.
        number = overlong ? 1e12 : value;
        number = negative ? -number : number;
    }

    private void skipNumberRest() {
        while (at < bytes.length && (bytes[at] >= '0' && bytes[at] <= '9' || bytes[at] == '.' || bytes[at] == '-'
                || bytes[at] == '+')) {
            at++;
        }
    }

    private Token readWord() {
        int from = at;
        while (at < bytes.length && !isBlank(bytes[at]) && !isDelimiter(bytes[at])) {
            at++;
        }
        operator = word(from, at);
        switch (operator) {
            case "true" -> operand = COSBoolean.TRUE;
            case "false" -> operand = COSBoolean.FALSE;
            case "null" -> operand = COSNull.NULL;
            default -> {
                return Token.OPERATOR;
            }
        }
        return Token.OPERAND;
    }

    /** Operators of one or two letters are most of a stream; they are not made anew each time. */
    private String word(int from, int to) {
        int length = to - from;
        if (length == 1 && bytes[from] > 0) {
            return Words.ONE[bytes[from]];
        }
        if (length == 2 && bytes[from] > 0 && bytes[from + 1] > 0) {
            return Words.two(bytes[from], bytes[from + 1]);
        }
        return new String(bytes, from, length, StandardCharsets.ISO_8859_1);
    }

    private COSName readName() {
        at++;
        ByteArrayOutputStream name = new ByteArrayOutputStream();
        while (at < bytes.length && !isBlank(bytes[at]) && !isDelimiter(bytes[at])) {
            if (bytes[at] == '#' && at + 2 < bytes.length && hex(bytes[at + 1]) >= 0 && hex(bytes[at + 2]) >= 0) {
                name.write(hex(bytes[at + 1]) << 4 | hex(bytes[at + 2]));
                at += 3;
            } else {
                name.write(bytes[at++]);
            }
        }
        return COSName.getPDFName(name.toString(StandardCharsets.UTF_8));
    }

    private byte[] readString() {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        int open = 1;
        at++;
        while (at < bytes.length) {
            byte b = bytes[at++];
            if (b == '\\') {
                readEscape(text);
                continue;
            }
            open += b == '(' ? 1 : b == ')' ? -1 : 0;
            if (open == 0) {
                break;
            }
            text.write(b);
        }
        return text.toByteArray();
    }

    private void readEscape(ByteArrayOutputStream text) {
        if (at >= bytes.length) {
            return;
        }
        byte b = bytes[at++];
        switch (b) {
            case 'n' -> text.write('\n');
            case 'r' -> text.write('\r');
            case 't' -> text.write('\t');
            case 'b' -> text.write('\b');
            case 'f' -> text.write('\f');
            case '\n' -> { }
            case '\r' -> at += at < bytes.length && bytes[at] == '\n' ? 1 : 0;
            case '0', '1', '2', '3', '4', '5', '6', '7' -> {
                int code = b - '0';
                for (int i = 0; i < 2 && at < bytes.length && bytes[at] >= '0' && bytes[at] <= '7'; i++) {
                    code = 8 * code + bytes[at++] - '0';
                }
                text.write(code);
            }
            default -> text.write(b);
        }
    }

    private byte[] readHex() {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        at++;
        int half = -1;
        while (at < bytes.length) {
            byte b = bytes[at++];
            if (b == '>') {
                break;
            }
            int digit = hex(b);
            if (digit >= 0 && half < 0) {
                half = digit;
            } else if (digit >= 0) {
                text.write(half << 4 | digit);
                half = -1;
            }
        }
        if (half >= 0) {
            text.write(half << 4);
        }
        return text.toByteArray();
    }

    private COSArray readArray(int depth) {
        COSArray array = new COSArray();
        at++;
        while (depth < DEEPEST) {
            switch (next(depth + 1)) {
                case NUMBER -> array.add(numberAsOperand());
                case OPERAND -> array.add(operand);
                case OPERATOR -> {
                    if (operator.equals("]")) {
                        return array;
                    }
                }
                default -> {
                    return array;
                }
            }
        }
        return array;
    }

    private COSDictionary readDictionary(int depth) {
        at += 2;
        COSDictionary dictionary = new COSDictionary();
        COSName key = null;
        while (depth < DEEPEST) {
            Token token = next(depth + 1);
            if (token == Token.END || token == Token.OPERATOR && operator.equals(">")) {
                at += token == Token.END || at >= bytes.length || bytes[at] != '>' ? 0 : 1;
                return dictionary;
            }
            COSBase value = token == Token.NUMBER ? numberAsOperand() : token == Token.OPERAND ? operand : null;
            if (key == null) {
                key = value instanceof COSName name ? name : null;
            } else if (value != null) {
                dictionary.setItem(key, value);
                key = null;
            }
        }
        return dictionary;
    }

    /** After {@code BI}: reads the entries of an inline picture and goes on behind its data. */
    COSDictionary inlinePicture() {
        COSDictionary entries = new COSDictionary();
        COSName key = null;
        while (true) {
            Token token = next();
            if (token == Token.END) {
                return entries;
            }
            if (token == Token.OPERATOR) {
                if (operator.equals("ID")) {
                    at = (int) Math.min(bytes.length, at + plainLength(entries));
                    skipPictureData();
                    return entries;
                }
                continue;
            }
            COSBase value = token == Token.NUMBER ? numberAsOperand() : operand;
            if (key == null) {
                key = value instanceof COSName name ? name : null;
            } else {
                entries.setItem(key, value);
                key = null;
            }
        }
    }

    /** How long the data of a picture are where they are not packed; they may hold anything. */
    private static long plainLength(COSDictionary entries) {
        if (entries.containsKey(COSName.F) || entries.containsKey(COSName.FILTER)) {
            return 0;
        }
        long bits = Math.max(1, entries.getInt(COSName.BPC, COSName.BITS_PER_COMPONENT, 1));
        COSBase space = entries.getDictionaryObject(COSName.CS, COSName.COLORSPACE);
        boolean rgb = COSName.RGB.equals(space) || COSName.DEVICERGB.equals(space);
        boolean cmyk = COSName.CMYK.equals(space) || COSName.DEVICECMYK.equals(space);
        long row = (entries.getInt(COSName.W, COSName.WIDTH, 0) * bits * (rgb ? 3 : cmyk ? 4 : 1) + 7) / 8;
        return Math.max(0, row * entries.getInt(COSName.H, COSName.HEIGHT, 0));
    }

    /** The data end at an {@code EI} before a blank that is followed by what can be content. */
    private void skipPictureData() {
        while (at < bytes.length) {
            boolean end = bytes[at] == 'E' && at + 1 < bytes.length && bytes[at + 1] == 'I'
                    && (at + 2 == bytes.length || isBlank(bytes[at + 2]));
            if (end && readsOn(at + 2)) {
                at += 2;
                return;
            }
            at++;
        }
    }

    private boolean readsOn(int from) {
        for (int i = from; i < Math.min(bytes.length, from + 10); i++) {
            if (!isBlank(bytes[i]) && (bytes[i] < ' ' || bytes[i] == 127)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isBlank(byte b) {
        return b == ' ' || b == '\n' || b == '\r' || b == '\t' || b == '\f' || b == 0;
    }

    private static boolean isDelimiter(byte b) {
        return b == '/' || b == '(' || b == ')' || b == '<' || b == '>' || b == '[' || b == ']' || b == '{'
                || b == '}' || b == '%';
    }

    private static int hex(byte b) {
        return Character.digit(b, 16);
    }

    private static double[] tenths() {
        double[] tenths = new double[20];
        tenths[0] = 1;
        for (int i = 1; i < tenths.length; i++) {
            tenths[i] = 10 * tenths[i - 1];
        }
        return tenths;
    }

    /** Short words, each made once. */
    private static final class Words {
        static final String[] ONE = new String[128];
        private static final String[] TWO = new String[128 * 128];

        static {
            for (char c = 0; c < ONE.length; c++) {
                ONE[c] = String.valueOf(c);
            }
        }

        private Words() {
        }

        static String two(byte a, byte b) {
            int i = a << 7 | b;
            String word = TWO[i];
            if (word == null) {
                word = ("" + (char) a + (char) b).intern();
                TWO[i] = word;
            }
            return word;
        }
    }
}
