// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDSimpleFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.font.encoding.GlyphList;
import org.probeleaf.drawing.primitive.LetterForm;
import org.probeleaf.schematic.geometry.Point;

/**
 * Says which letters the codes of a page's fonts are. Where a font does not tell, or tells what cannot be, a sign stands
 * for the letter and its looks are kept.
 */
final class UnnamedLetters {

    /** Signs come from here; programs that use this area for letters of their own begin at U+F000. */
    private static final char FIRST_SIGN = '\ue000';
    private static final int MOST_SIGNS = 4096;
    /** How near straight pieces come to a curve, in font sizes, and into how many it is cut at most. */
    private static final double FLATNESS = 0.002;
    private static final int DEPTH = 5;

    private final ExtractionLimits limits;
    private final Map<COSBase, Font> fonts = new IdentityHashMap<>();
    private final List<LetterForm> forms = new ArrayList<>();

    /** A font of the page, with what its codes say. */
    private record Font(int number, Map<Integer, String> letters) {
    }

    UnnamedLetters(ExtractionLimits limits) {
        this.limits = limits;
    }

    /** The letters that signs stand for. */
    List<LetterForm> forms() {
        return forms;
    }

    /** The text of a code: as the font has it, or a sign; null where it has none and no looks either. */
    String text(PDFont font, int code) throws IOException {
        Font known = fonts.computeIfAbsent(font.getCOSObject(), k -> new Font(fonts.size(), new HashMap<>()));
        if (!known.letters.containsKey(code)) {
            String named = font.toUnicode(code);
            known.letters.put(code, isName(named) ? named : unnamed(font, code, known.number, named));
        }
        return known.letters.get(code);
    }

    /** Whether a font's word for a letter is one: no control character, and nothing that is no character at all. */
    private static boolean isName(String named) {
        return named != null && named.codePoints().noneMatch(c -> c == 0xfffd || isNone(Character.getType(c)));
    }

    private static boolean isNone(int type) {
        return type == Character.CONTROL || type == Character.PRIVATE_USE || type == Character.SURROGATE
                || type == Character.UNASSIGNED;
    }

    private String unnamed(PDFont font, int code, int number, String named) {
        try {
            LetterForm form = form(font, code, number);
            if (form == null || forms.size() >= MOST_SIGNS) {
                String encoded = encoded(font, code);
                return isName(encoded) ? encoded : named;
            }
            if (form.lines().isEmpty()) {
                return " ";
            }
            form.lines().forEach(l -> limits.points(l.size()));
            forms.add(form);
            return String.valueOf(form.sign());
        } catch (TooMuchException | CancellationException e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            // A damaged font: its letter is lost, the page is not.
            return named;
        }
    }

    /** What a font's encoding says where its map to Unicode says nothing. */
    private static String encoded(PDFont font, int code) {
        return font instanceof PDSimpleFont simple && simple.getEncoding() != null
                ? GlyphList.getAdobeGlyphList().toUnicode(simple.getEncoding().getName(code)) : null;
    }

    private LetterForm form(PDFont font, int code, int number) throws IOException {
        char sign = (char) (FIRST_SIGN + forms.size());
        if (font instanceof PDType3Font drawn) {
            return new DrawnLetter(drawn, code, limits).form(sign, number);
        }
        if (font.isEmbedded() && font instanceof PDVectorFont vector) {
            AffineTransform toSize = font.getFontMatrix().createAffineTransform();
            return new LetterForm(sign, number, outlines(vector.getNormalizedPath(code), toSize), true);
        }
        return null;
    }

    private static List<List<Point>> outlines(Shape path, AffineTransform toSize) {
        List<List<Point>> outlines = new ArrayList<>();
        List<Point> open = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator i = new FlatteningPathIterator(path.getPathIterator(toSize), FLATNESS, DEPTH); !i.isDone();
                i.next()) {
            int kind = i.currentSegment(at);
            if (kind != PathIterator.SEG_LINETO && open.size() > 2) {
                outlines.add(List.copyOf(open));
            }
            if (kind != PathIterator.SEG_LINETO) {
                open.clear();
            }
            if (kind != PathIterator.SEG_CLOSE) {
                open.add(new Point(at[0], at[1]));
            }
        }
        if (open.size() > 2) {
            outlines.add(open);
        }
        return outlines;
    }
}
