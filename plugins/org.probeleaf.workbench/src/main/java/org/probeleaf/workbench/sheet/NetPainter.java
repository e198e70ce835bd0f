// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.RGB;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.geometry.PinMark;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/** Paints nets: a band under the ink, marks at the pins over it. */
final class NetPainter {

    private final Look look;

    NetPainter(Look look) {
        this.look = look;
    }

    /** The broad band of the selected net. */
    void band(GC gc, PageFrame frame, Net net) {
        double width = Math.max(7, Math.min(24, frame.zoom() * 6.5));
        stroke(gc, frame, net, Palette.tint(Palette.SKY, 0.55), width);
    }

    /** The thin emphasis of the net under the pointer. */
    void hover(GC gc, PageFrame frame, Net net) {
        double width = Math.max(3.5, Math.min(10, frame.zoom() * 3.2));
        stroke(gc, frame, net, Palette.tint(Palette.SKY, 0.85), width);
    }

    /** A net that the selected signal reaches. */
    void followed(GC gc, PageFrame frame, Net net) {
        double width = Math.max(4, Math.min(14, frame.zoom() * 4));
        stroke(gc, frame, net, Palette.tint(Palette.GREEN, 0.28), width);
    }

    /** The selected net on a thumbnail. */
    void small(GC gc, PageFrame frame, Net net) {
        stroke(gc, frame, net, Palette.tint(Palette.SKY, 0.8), 3);
    }

    private void stroke(GC gc, PageFrame frame, Net net, RGB colour, double width) {
        gc.setForeground(look.colour(colour));
        gc.setBackground(look.colour(colour));
        gc.setLineWidth((int) Math.round(width));
        gc.setLineCap(SWT.CAP_ROUND);
        gc.setLineJoin(SWT.JOIN_ROUND);
        Path path = new Path(gc.getDevice());
        for (Wire wire : net.wires()) {
            if (wire.page() == frame.page()) {
                line(path, frame, wire.points());
            }
        }
        gc.drawPath(path);
        path.dispose();
        for (NetLabel label : net.labels()) {
            if (label.page() == frame.page()) {
                dot(gc, frame.toScreen(label.at()), width * 0.8);
            }
        }
        gc.setLineCap(SWT.CAP_FLAT);
        gc.setLineWidth(1);
    }

    private static void line(Path path, PageFrame frame, List<Point> points) {
        for (int i = 0; i < points.size(); i++) {
            Point p = frame.toScreen(points.get(i));
            if (i == 0) {
                path.moveTo((float) p.x(), (float) p.y());
            } else {
                path.lineTo((float) p.x(), (float) p.y());
            }
        }
    }

    private static void dot(GC gc, Point at, double radius) {
        int r = (int) Math.round(radius);
        gc.fillOval((int) Math.round(at.x()) - r, (int) Math.round(at.y()) - r, 2 * r, 2 * r);
    }

    /** The marks at the pins of the selected net. */
    void pins(GC gc, PageFrame frame, List<TracedPin> pins) {
        double size = Math.max(4.5, Math.min(11, frame.zoom() * 3.6));
        for (TracedPin pin : pins) {
            if (pin.pin().page() == frame.page() && pin.pin().at() != null) {
                Point out = PinMark.outwards(pin.part(), pin.pin());
                mark(gc, frame.toScreen(pin.pin().at()), size, pin.direction(), out);
            }
        }
    }

    /** One mark; also used in lists, where {@code out} points to the right. */
    void mark(GC gc, Point at, double size, PinDirection direction, Point out) {
        PinMark mark = PinMark.of(direction, out.x(), out.y());
        gc.setForeground(look.colour(Palette.BLUE));
        gc.setBackground(look.colour(mark.filled() ? Palette.BLUE : Palette.WHITE));
        gc.setLineWidth(size > 7 ? 2 : 1);
        if (mark.outlines().isEmpty()) {
            int d = (int) Math.round(size * 1.5);
            int x = (int) Math.round(at.x() - d / 2.0);
            int y = (int) Math.round(at.y() - d / 2.0);
            gc.fillOval(x, y, d, d);
            gc.drawOval(x, y, d, d);
        }
        for (double[] outline : mark.outlines()) {
            Path path = new Path(gc.getDevice());
            for (int i = 0; i < outline.length; i += 2) {
                float x = (float) (at.x() + outline[i] * size);
                float y = (float) (at.y() + outline[i + 1] * size);
                if (i == 0) {
                    path.moveTo(x, y);
                } else {
                    path.lineTo(x, y);
                }
            }
            path.close();
            gc.fillPath(path);
            gc.drawPath(path);
            path.dispose();
        }
        gc.setLineWidth(1);
    }
}
