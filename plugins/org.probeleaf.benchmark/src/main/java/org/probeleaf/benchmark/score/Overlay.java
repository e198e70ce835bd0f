// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import javax.imageio.ImageIO;

import org.probeleaf.benchmark.Case;
import org.probeleaf.benchmark.score.Judgement.NetVerdict;
import org.probeleaf.benchmark.score.ReadPins.ReadPin;
import org.probeleaf.benchmark.score.Truth.TrueNet;
import org.probeleaf.benchmark.score.Truth.TruePin;
import org.probeleaf.drawing.Raster;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Sheet;
import org.probeleaf.schematic.netlist.Wire;

/**
 * A picture of a page that shows why a sheet fails: the sheet in grey, each recognised net in a colour of its own
 * (wide where it is wrong), and where pins differ from the truth a ring with their name: red with a cross for one that
 * is on another net than it should be, red with a question mark in the middle of its part for one that was not read,
 * violet with a plus for one that is not there in truth.
 */
final class Overlay {

    private static final int LONG_SIDE = 3200;
    private static final Color MISSED = new Color(0xD00000);
    private static final Color EXTRA = new Color(0x7A00C8);
    /** A step round the circle of hues that brings no two neighbours near each other. */
    private static final float HUE_STEP = 0.61803399f;

    private final Netlist netlist;
    private final Judgement judgement;
    private final Graphics2D g;
    private final int page;
    private final double scale;
    private final List<Box> taken = new ArrayList<>();

    private Overlay(Netlist netlist, Judgement judgement, Graphics2D g, int page, double scale) {
        this.netlist = netlist;
        this.judgement = judgement;
        this.g = g;
        this.page = page;
        this.scale = scale;
    }

    /** Writes {@code CASE-PAGE.png} for each page into a folder. */
    static void write(Case c, Netlist netlist, Judgement judgement, Path folder) throws IOException {
        try (SheetFile file = SheetFile.open(c.sheet(), null)) {
            for (Sheet sheet : netlist.sheets()) {
                double scale = LONG_SIDE / Math.max(sheet.width(), sheet.height());
                BufferedImage image = paper(file, sheet, scale);
                Graphics2D g = image.createGraphics();
                g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
                g.scale(scale, scale);
                new Overlay(netlist, judgement, g, sheet.page(), scale).paint();
                g.dispose();
                ImageIO.write(image, "png", folder.resolve(c.name() + "-" + sheet.page() + ".png").toFile());
            }
        }
    }

    private static BufferedImage paper(SheetFile file, Sheet sheet, double scale) throws SheetException {
        Raster raster = file.render(sheet.page(), scale, new Box(0, 0, sheet.width(), sheet.height()));
        BufferedImage image = new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < raster.argb().length; i++) {
            int rgb = raster.argb()[i];
            int light = (3 * (rgb >> 16 & 0xFF) + 6 * (rgb >> 8 & 0xFF) + (rgb & 0xFF)) / 10;
            int grey = 150 + light * 105 / 255;
            image.setRGB(i % raster.width(), i / raster.width(), grey << 16 | grey << 8 | grey);
        }
        return image;
    }

    private void paint() {
        Set<String> right = judgement.rightNets();
        Set<String> judged = judgement.judgedNets();
        int number = 0;
        for (Net net : netlist.nets()) {
            number++;
            boolean wrong = judged.contains(net.id()) && !right.contains(net.id());
            g.setColor(Color.getHSBColor(number * HUE_STEP, 0.85f, number % 2 == 0 ? 0.85f : 0.6f));
            g.setStroke(new BasicStroke(wrong ? 2.2f : 1.0f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            net.wires().stream().filter(w -> w.page() == page).forEach(this::wire);
            net.junctions().stream().filter(j -> j.page() == page)
                    .forEach(j -> g.fill(new Ellipse2D.Double(j.at().x() - 1.4, j.at().y() - 1.4, 2.8, 2.8)));
        }
        for (NetVerdict v : judgement.verdicts()) {
            if (!v.exact()) {
                marks(v);
            }
        }
        if (page == netlist.sheets().get(0).page()) {
            lost();
        }
    }

    private void wire(Wire wire) {
        Path2D line = new Path2D.Double();
        line.moveTo(wire.points().get(0).x(), wire.points().get(0).y());
        wire.points().forEach(p -> line.lineTo(p.x(), p.y()));
        g.draw(line);
    }

    private void marks(NetVerdict v) {
        List<ReadPin> read = new ArrayList<>(v.own());
        read.addAll(v.away());
        for (ReadPin pin : read) {
            TrueNet owner = judgement.owner(pin.net());
            if (pin.pin().page() != page) {
                continue;
            }
            if (owner != v.net()) {
                mark(pin.pin().at(), MISSED, "\u00d7", WrongNets.label(pin) + " is " + v.net().name() + ", not "
                        + owner.name());
            } else if (!pin.net().equals(v.main())) {
                mark(pin.pin().at(), MISSED, "\u00d7", WrongNets.label(pin) + " cut off from " + v.net().name());
            }
        }
        for (TruePin pin : v.unread()) {
            Point at = placeOf(pin.key().ref());
            if (at != null) {
                mark(at, MISSED, "?", pin.key().ref() + "." + pin.key().key() + " missing on " + v.net().name());
            }
        }
        if (judgement.owner(v.main()) == v.net()) {
            for (ReadPin pin : judgement.foreign(v.main())) {
                if (pin.pin().page() == page) {
                    mark(pin.pin().at(), EXTRA, "+", WrongNets.label(pin) + " is not on " + v.net().name());
                }
            }
        }
    }

    /** In the first page's corner the pins that have no place, since their parts were not found. */
    private void lost() {
        for (NetVerdict v : judgement.verdicts()) {
            for (TruePin pin : v.unread()) {
                if (netlist.parts().stream().noneMatch(p -> Spelling.ref(p.ref()).equals(pin.key().ref()))) {
                    label(8, 8, MISSED, "? " + pin.key().ref() + "." + pin.key().key() + " missing on "
                            + v.net().name() + ", its part was not found");
                }
            }
        }
    }

    /** The middle of a part's first unit on this page, or null where the part was not found here. */
    private Point placeOf(String ref) {
        return netlist.parts().stream().filter(p -> Spelling.ref(p.ref()).equals(ref)).flatMap(p -> p.units().stream())
                .filter(u -> u.page() == page).findFirst().map(PartUnit::box).map(Box::centre).orElse(null);
    }

    private void mark(Point at, Color colour, String sign, String label) {
        g.setColor(colour);
        g.setStroke(new BasicStroke(0.8f));
        g.draw(new Ellipse2D.Double(at.x() - 3, at.y() - 3, 6, 6));
        label(at.x() + 4, at.y(), colour, sign + " " + label);
    }

    private void label(double x, double y, Color colour, String text) {
        float size = (float) (15 / scale);
        g.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 1).deriveFont(size));
        Box place = free(x, y, g.getFontMetrics().stringWidth(text), size);
        g.setColor(new Color(255, 255, 255, 200));
        g.fill(new Rectangle2D.Double(place.x0(), place.y0(), place.width(), place.height()));
        g.setColor(colour);
        g.drawString(text, (float) place.x0(), (float) (place.y1() - 0.2 * size));
    }

    /** A place for a label beside a point, moved down until no other label is there. */
    private Box free(double x, double y, double width, double height) {
        Box box = new Box(x, y - height / 2, x + width, y + height / 2);
        boolean moved = true;
        while (moved) {
            moved = false;
            for (Box other : taken) {
                if (other.intersects(box)) {
                    box = new Box(x, other.y1() + 0.01, x + width, other.y1() + 0.01 + height);
                    moved = true;
                }
            }
        }
        taken.add(box);
        return box;
    }
}
