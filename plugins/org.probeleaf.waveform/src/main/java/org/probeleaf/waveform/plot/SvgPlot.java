// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

import org.probeleaf.waveform.plot.PlotShape.Area;
import org.probeleaf.waveform.plot.PlotShape.Line;
import org.probeleaf.waveform.plot.PlotShape.Words;

/** Writes a plot as SVG 1.1 (W3C Recommendation, 2011), on white. */
public final class SvgPlot {

    private SvgPlot() {
    }

    /** The document. */
    public static String of(Plot plot) {
        StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        out.append(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%s\" height=\"%s\""
                + " viewBox=\"0 0 %s %s\" font-family=\"sans-serif\" font-size=\"11\">%n", number(plot.width()),
                number(plot.height()), number(plot.width()), number(plot.height())));
        out.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        for (PlotShape shape : plot.shapes()) {
            if (shape instanceof Line line) {
                line(out, line);
            } else if (shape instanceof Area area) {
                area(out, area);
            } else {
                words(out, (Words) shape);
            }
        }
        return out.append("</svg>\n").toString();
    }

    private static void line(StringBuilder out, Line line) {
        out.append("<polyline fill=\"none\" stroke=\"").append(colour(line.ink())).append("\" stroke-width=\"")
                .append(number(line.ink().width())).append("\" stroke-linejoin=\"round\"");
        if (line.ink().dashes().length > 0) {
            out.append(" stroke-dasharray=\"").append(DoubleStream.of(line.ink().dashes()).mapToObj(SvgPlot::number)
                    .collect(Collectors.joining(" "))).append('"');
        }
        points(out, line.xy());
    }

    private static void area(StringBuilder out, Area area) {
        out.append("<polygon fill=\"").append(colour(area.ink())).append('"');
        points(out, area.xy());
    }

    private static void points(StringBuilder out, double[] xy) {
        out.append(" points=\"");
        for (int i = 0; i < xy.length; i += 2) {
            out.append(i == 0 ? "" : " ").append(number(xy[i])).append(',').append(number(xy[i + 1]));
        }
        out.append("\"/>\n");
    }

    private static void words(StringBuilder out, Words words) {
        out.append("<text x=\"").append(number(words.x())).append("\" y=\"").append(number(words.y() + 4))
                .append("\" fill=\"").append(colour(words.ink())).append("\" text-anchor=\"")
                .append(words.lean().name().toLowerCase(Locale.ROOT)).append('"')
                .append(words.bold() ? " font-weight=\"bold\"" : "").append('>').append(escaped(words.text()))
                .append("</text>\n");
    }

    private static String colour(Ink ink) {
        return String.format(Locale.ROOT, "#%06x", ink.rgb());
    }

    private static String number(double value) {
        double rounded = Math.round(value * 100) / 100.0;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
                .replaceAll("[\\p{Cntrl}&&[^\\t]]", " ");
    }
}
