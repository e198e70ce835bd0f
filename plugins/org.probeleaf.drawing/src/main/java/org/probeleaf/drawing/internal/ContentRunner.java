// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;

/**
 * Runs a content stream: instructions that make paths, of which a sheet has tens of thousands, go straight to
 * where they are kept, all others by way of the PDF library. The library's own reader makes several objects for each number; with it,
 * taking a sheet apart takes five times as long.
 */
final class ContentRunner {

    /** More operands than any operator takes are debris. */
    private static final int MOST_OPERANDS = 200;

    private final PathPainter painter;
    private final ContentSink sink;
    private final double[] numbers = new double[MOST_OPERANDS];
    private final boolean[] whole = new boolean[MOST_OPERANDS];
    private int count;
    /** All operands, once one of them is no number; else empty. */
    private final List<COSBase> operands = new ArrayList<>();

    /**
     * @param painter takes paths
     * @param sink    takes all else
     */
    ContentRunner(PathPainter painter, ContentSink sink) {
        this.painter = painter;
        this.sink = sink;
    }

    /**
     * Runs a stream; streams run within it need a runner of their own.
     *
     * @param content unpacked
     * @throws IOException where the library gives up
     */
    void run(byte[] content) throws IOException {
        ContentScanner scanner = new ContentScanner(content);
        while (true) {
            switch (scanner.next()) {
                case NUMBER -> add(scanner);
                case OPERAND -> {
                    toList();
                    if (operands.size() < MOST_OPERANDS) {
                        operands.add(scanner.operand());
                    }
                }
                case OPERATOR -> {
                    if (scanner.operator().equals("BI")) {
                        COSDictionary picture = scanner.inlinePicture();
                        sink.inlinePicture(picture);
                    } else {
                        operator(scanner.operator());
                    }
                    count = 0;
                    operands.clear();
                }
                default -> {
                    return;
                }
            }
        }
    }

    private void add(ContentScanner scanner) {
        if (!operands.isEmpty()) {
            if (operands.size() < MOST_OPERANDS) {
                operands.add(scanner.numberAsOperand());
            }
        } else if (count < MOST_OPERANDS) {
            numbers[count] = scanner.number();
            whole[count++] = scanner.whole();
        }
    }

    private void toList() {
        for (int i = 0; i < count; i++) {
            operands.add(ContentScanner.asOperand(numbers[i], whole[i]));
        }
        count = 0;
    }

    private void operator(String name) throws IOException {
        sink.counted();
        if (!pathOperator(name) && !paintOperator(name) && !styleOperator(name)) {
            toList();
            // The library may keep the list.
            sink.other(name, new ArrayList<>(operands));
        }
    }

    private boolean pathOperator(String name) {
        double[] n = numbers;
        switch (name) {
            case "m" -> {
                if (has(2)) {
                    painter.moveTo(n[0], n[1]);
                }
            }
            case "l" -> {
                if (has(2)) {
                    painter.lineTo(n[0], n[1]);
                }
            }
            case "c" -> {
                if (has(6)) {
                    painter.curveTo(n[0], n[1], n[2], n[3], n[4], n[5]);
                }
            }
            case "v" -> {
                if (has(4)) {
                    painter.curveFromHere(n[0], n[1], n[2], n[3]);
                }
            }
            case "y" -> {
                if (has(4)) {
                    painter.curveTo(n[0], n[1], n[2], n[3], n[2], n[3]);
                }
            }
            case "re" -> {
                if (has(4)) {
                    painter.rectangle(n[0], n[1], n[2], n[3]);
                }
            }
            case "h" -> painter.closePath();
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Colours and the like, which many programs set anew for each line. */
    private boolean styleOperator(String name) {
        switch (name) {
            case "w" -> {
                if (has(1)) {
                    sink.lineWidth(numbers[0]);
                }
            }
            case "J" -> {
                if (has(1)) {
                    sink.lineCap((int) numbers[0]);
                }
            }
            case "RG", "rg" -> {
                if (has(3)) {
                    sink.colour(name.equals("RG"), numbers[0], numbers[1], numbers[2]);
                }
            }
            case "G", "g" -> {
                if (has(1)) {
                    sink.colour(name.equals("G"), numbers[0], numbers[0], numbers[0]);
                }
            }
            // How lines turn and how smooth curves are says nothing about what is drawn.
            case "j", "M", "i", "ri" -> { }
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean paintOperator(String name) {
        switch (name) {
            case "S" -> painter.strokePath();
            case "s" -> {
                painter.closePath();
                painter.strokePath();
            }
            case "f", "F", "f*" -> painter.fillPath();
            case "B", "B*" -> painter.fillAndStrokePath();
            case "b", "b*" -> {
                painter.closePath();
                painter.fillAndStrokePath();
            }
            case "n" -> painter.endPath();
            case "W", "W*" -> painter.clip();
            case "q" -> sink.saveGraphicsState();
            case "Q" -> sink.restoreIfSaved();
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Whether there are enough numbers and nothing else. */
    private boolean has(int wanted) {
        if (count < wanted && operands.size() < wanted) {
            sink.missing();
        }
        return count >= wanted;
    }
}
