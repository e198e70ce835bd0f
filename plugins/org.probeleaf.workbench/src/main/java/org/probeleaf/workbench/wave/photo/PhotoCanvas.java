// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.probeleaf.photo.graticule.Corners;
import org.probeleaf.photo.graticule.GridMap;
import org.probeleaf.photo.graticule.Spot;
import org.probeleaf.photo.picture.Picture;
import org.probeleaf.photo.picture.Scaling;
import org.probeleaf.photo.trace.FollowedTrace;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/**
 * The picture with the graticule and the trace that were found. The four corners are moved by mouse, or by keys: 1 to 4
 * take one, arrows move it by a pixel, with Shift by ten.
 */
final class PhotoCanvas {

    private static final int LONGEST = 1600;
    private static final int REACH = 16;
    private static final int HANDLE = 6;
    private static final String TIP = "Drag a corner, or take it with 1 to 4 and move it with the arrows, with Shift by ten pixels";
    private static final String[] NAMES = {"top left", "top right", "bottom right", "bottom left"};

    private final Canvas canvas;
    private final Look look;
    private final Picture picture;
    private final Image image;
    private final Consumer<Corners> moved;
    private final Consumer<Integer> picked;
    private List<Spot> corners = List.of();
    private GridMap map;
    private FollowedTrace trace;
    private int taken;
    private boolean dragging;
    private boolean picking;

    /**
     * @param moved  told the corners where the person left them
     * @param picked told the colour that was clicked, {@code 0xRRGGBB}, after {@link #pick}
     */
    PhotoCanvas(Composite parent, Picture picture, Consumer<Corners> moved, Consumer<Integer> picked) {
        this.picture = picture;
        this.moved = moved;
        this.picked = picked;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        canvas.setData("name", "photograph");
        canvas.setToolTipText(TIP);
        look = new Look(canvas);
        Picture shown = Scaling.smaller(picture, Scaling.factor(picture, LONGEST));
        ImageData data = new ImageData(shown.width(), shown.height(), 32, new PaletteData(0xff0000, 0xff00, 0xff));
        for (int y = 0; y < shown.height(); y++) {
            data.setPixels(0, y, shown.width(), shown.rgb(), y * shown.width());
        }
        image = new Image(canvas.getDisplay(), data);
        canvas.addListener(SWT.Dispose, e -> image.dispose());
        canvas.addListener(SWT.Paint, e -> paint(e.gc));
        canvas.addListener(SWT.MouseDown, this::down);
        canvas.addListener(SWT.MouseMove, this::move);
        canvas.addListener(SWT.MouseUp, this::up);
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, e -> e.doit = e.detail != SWT.TRAVERSE_ARROW_NEXT
                && e.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
        canvas.addListener(SWT.FocusIn, e -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, e -> canvas.redraw());
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = "Photograph; 1 to 4 take a corner, arrows move it. " + words();
            }
        });
    }

    Canvas control() {
        return canvas;
    }

    /** Shows what was found; null for what was not. */
    void show(GridMap found, FollowedTrace followed) {
        map = found;
        trace = followed;
        if (!dragging && found != null) {
            corners = new ArrayList<>(found.corners().list());
        } else if (corners.isEmpty()) {
            double w = picture.width();
            double h = picture.height();
            corners = new ArrayList<>(List.of(new Spot(w * 0.15, h * 0.15), new Spot(w * 0.85, h * 0.15),
                    new Spot(w * 0.85, h * 0.85), new Spot(w * 0.15, h * 0.85)));
        }
        canvas.redraw();
    }

    /** The next click takes a colour. */
    void pick() {
        picking = true;
        canvas.setCursor(canvas.getDisplay().getSystemCursor(SWT.CURSOR_CROSS));
        canvas.setFocus();
    }

    private double scale() {
        Point size = canvas.getSize();
        return Math.min((size.x - 4.0) / picture.width(), (size.y - 4.0) / picture.height());
    }

    private double left() {
        return (canvas.getClientArea().width - picture.width() * scale()) / 2;
    }

    private double top() {
        return (canvas.getClientArea().height - picture.height() * scale()) / 2;
    }

    private Point screen(Spot s) {
        return new Point((int) Math.round(left() + (s.x() + 0.5) * scale()), (int) Math.round(top() + (s.y() + 0.5) * scale()));
    }

    private Spot spot(double x, double y) {
        return new Spot(Math.max(0, Math.min(picture.width() - 1, (x - left()) / scale() - 0.5)),
                Math.max(0, Math.min(picture.height() - 1, (y - top()) / scale() - 0.5)));
    }

    private void paint(GC gc) {
        gc.setBackground(look.colour(Palette.DESK));
        gc.fillRectangle(canvas.getClientArea());
        gc.setInterpolation(SWT.HIGH);
        gc.drawImage(image, 0, 0, image.getBounds().width, image.getBounds().height, (int) left(), (int) top(),
                (int) (picture.width() * scale()), (int) (picture.height() * scale()));
        gc.setAntialias(SWT.ON);
        if (map != null && !dragging) {
            grid(gc);
            if (trace != null) {
                trace(gc);
            }
        }
        frame(gc);
    }

    private void grid(GC gc) {
        gc.setForeground(look.colour(Palette.SKY));
        gc.setLineWidth(1);
        gc.setAlpha(130);
        int w = map.divisions().across();
        int h = map.divisions().up();
        for (int u = 0; u <= w; u++) {
            line(gc, u, 0, u, h);
        }
        for (int v = 0; v <= h; v++) {
            line(gc, 0, v, w, v);
        }
        gc.setAlpha(255);
    }

    /** A line of the grid, which a curved screen bends. */
    private void line(GC gc, double u0, double v0, double u1, double v1) {
        int pieces = 16;
        int[] xy = new int[2 * (pieces + 1)];
        for (int i = 0; i <= pieces; i++) {
            double t = (double) i / pieces;
            Point p = screen(map.picture(u0 + (u1 - u0) * t, v0 + (v1 - v0) * t));
            xy[2 * i] = p.x;
            xy[2 * i + 1] = p.y;
        }
        gc.drawPolyline(xy);
    }

    private void trace(GC gc) {
        List<Integer> run = new ArrayList<>();
        double[] down = trace.down();
        for (int i = 0; i <= down.length; i++) {
            if (i == down.length || Double.isNaN(down[i])) {
                int[] xy = run.stream().mapToInt(Integer::intValue).toArray();
                if (xy.length >= 4) {
                    gc.setForeground(look.colour(Palette.WHITE));
                    gc.setLineWidth(4);
                    gc.drawPolyline(xy);
                    gc.setForeground(look.colour(Palette.VERMILLION));
                    gc.setLineWidth(2);
                    gc.drawPolyline(xy);
                }
                run.clear();
            } else {
                Point p = screen(map.picture((i + 0.5) / trace.perDivision(), down[i]));
                run.add(p.x);
                run.add(p.y);
            }
        }
    }

    private void frame(GC gc) {
        if (corners.size() < 4) {
            return;
        }
        for (int i = 0; i < 4; i++) {
            Point a = screen(corners.get(i));
            Point b = screen(corners.get((i + 1) % 4));
            gc.setForeground(look.colour(Palette.TEXT));
            gc.setLineWidth(3);
            gc.drawLine(a.x, a.y, b.x, b.y);
            gc.setForeground(look.colour(Palette.YELLOW));
            gc.setLineWidth(1);
            gc.drawLine(a.x, a.y, b.x, b.y);
        }
        gc.setFont(look.font(0, true));
        for (int i = 0; i < 4; i++) {
            Point p = screen(corners.get(i));
            boolean now = i == taken && canvas.isFocusControl();
            int r = now ? HANDLE + 3 : HANDLE;
            gc.setBackground(look.colour(now ? Palette.VERMILLION : Palette.BLUE));
            gc.fillOval(p.x - r, p.y - r, 2 * r, 2 * r);
            gc.setForeground(look.colour(Palette.WHITE));
            gc.setLineWidth(2);
            gc.drawOval(p.x - r, p.y - r, 2 * r, 2 * r);
            gc.setBackground(look.colour(Palette.TEXT));
            String number = " " + (i + 1) + " ";
            Point size = gc.textExtent(number);
            gc.drawText(number, p.x + (i == 0 || i == 3 ? -r - 2 - size.x : r + 2),
                    p.y + (i < 2 ? -r - 2 - size.y : r + 2));
        }
    }

    private void down(Event e) {
        canvas.setFocus();
        if (picking) {
            picking = false;
            canvas.setCursor(null);
            Spot s = spot(e.x, e.y);
            picked.accept(picture.at(s.x(), s.y()));
            return;
        }
        for (int i = 0; i < corners.size(); i++) {
            Point p = screen(corners.get(i));
            if (Math.hypot(p.x - e.x, p.y - e.y) <= REACH) {
                taken = i;
                dragging = true;
                canvas.redraw();
                return;
            }
        }
    }

    private void move(Event e) {
        if (dragging) {
            corners.set(taken, spot(e.x, e.y));
            canvas.redraw();
        }
    }

    private void up(Event e) {
        if (dragging) {
            dragging = false;
            settled();
        }
    }

    private void key(Event e) {
        int step = (e.stateMask & SWT.SHIFT) != 0 ? 10 : 1;
        if (e.character >= '1' && e.character <= '4') {
            taken = e.character - '1';
            canvas.redraw();
        } else if (corners.size() == 4 && (e.keyCode == SWT.ARROW_LEFT || e.keyCode == SWT.ARROW_RIGHT
                || e.keyCode == SWT.ARROW_UP || e.keyCode == SWT.ARROW_DOWN)) {
            Spot s = corners.get(taken);
            corners.set(taken, new Spot(
                    s.x() + (e.keyCode == SWT.ARROW_LEFT ? -step : e.keyCode == SWT.ARROW_RIGHT ? step : 0),
                    s.y() + (e.keyCode == SWT.ARROW_UP ? -step : e.keyCode == SWT.ARROW_DOWN ? step : 0)));
            e.doit = false;
            settled();
        }
    }

    /** Tells where the corners are now. */
    private void settled() {
        map = null;
        canvas.redraw();
        try {
            moved.accept(Corners.sorted(corners));
            canvas.setToolTipText(TIP);
        } catch (IllegalArgumentException crossed) {
            // Corners on top of each other make no screen; they wait until one is moved on.
            canvas.setToolTipText(crossed.getMessage());
        }
    }

    /** What the taken corner is called and where it is. */
    private String words() {
        if (corners.size() < 4) {
            return "";
        }
        Spot s = corners.get(taken);
        return String.format("Corner %d, %s: %.0f, %.0f", taken + 1, NAMES[taken], s.x(), s.y());
    }
}
