// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.workbench.correction.Correcting;
import org.probeleaf.workbench.correction.Task;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.wave.importing.ReadOtherwiseDialog;

/** The menu at a place of the sheet: what can be corrected there, and what can be done to the board. */
final class SheetMenu {

    private static final double REACH = 5;

    private final SheetCanvas canvas;
    private final SheetSession session;
    private final Correcting correcting;
    private final SheetMouse mouse;
    private final Menu menu;
    private final Look look;

    SheetMenu(SheetCanvas canvas, SheetSession session, Correcting correcting, SheetMouse mouse) {
        this.canvas = canvas;
        this.session = session;
        this.correcting = correcting;
        this.mouse = mouse;
        this.look = new Look(canvas);
        this.menu = new Menu(canvas);
        canvas.setMenu(menu);
        canvas.addListener(SWT.MenuDetect,
                e -> e.doit = ready(e.detail == SWT.MENU_KEYBOARD ? null : canvas.toControl(e.x, e.y)));
    }

    /**
     * Fills the menu.
     *
     * @param at the pointer on the canvas, or null for the selected place
     * @return whether there is anything in it
     */
    private boolean ready(Point at) {
        Optional<PageFrame> frame = at == null ? Optional.empty() : canvas.frameAt(at.x, at.y);
        Selection place = at == null ? session.selection().orElse(null)
                : frame.map(f -> mouse.under(f, at.x, at.y)).orElse(null);
        if (place == null || !correcting.possible() || correcting.active()) {
            return false;
        }
        Optional<CaptureMark> capture = captureAt(at);
        if (capture.isEmpty()) {
            session.select(place);
        }
        for (MenuItem item : menu.getItems()) {
            item.dispose();
        }
        capture.filter(c -> !session.readOnly()).ifPresent(c -> {
            MenuItem otherwise = new MenuItem(menu, SWT.PUSH);
            otherwise.setText("Read otherwise\u2026");
            otherwise.setImage(look.icon("wave"));
            otherwise.addListener(SWT.Selection, e -> ReadOtherwiseDialog.ask(canvas.getShell(), session, c));
        });
        if (capture.isPresent() && at != null) {
            session.selectMark(capture.get().id(), mouse.placeOf(capture.get()));
            return menu.getItemCount() > 0;
        }
        line(menu);
        fill(place, session.facts().orElseThrow());
        return true;
    }

    /** The capture whose card is at the pointer, or that is selected. */
    private Optional<CaptureMark> captureAt(Point at) {
        Optional<String> id = at == null ? session.selectedMark() : canvas.painter().cards().at(at.x, at.y).map(m -> m.id());
        return id.flatMap(i -> session.facts().flatMap(f -> f.state().captures().stream().filter(c -> c.id().equals(i))
                .findFirst()));
    }

    private void fill(Selection place, Facts facts) {
        boolean onPart = place.part() != null || facts.partAt(place.page(), place.at()).isPresent();
        board(place, onPart);
        Menu corrections = menu;
        if (menu.getItemCount() > 0) {
            new MenuItem(menu, SWT.SEPARATOR);
            MenuItem more = new MenuItem(menu, SWT.CASCADE);
            more.setText("Correct the reading");
            more.setImage(look.icon("corrections"));
            corrections = new Menu(menu);
            more.setMenu(corrections);
        }
        correct(corrections, place, facts, onPart);
    }

    /** What can be done to the board here; nothing on bare paper. */
    private void board(Selection place, boolean onPart) {
        if (place.pin() != null) {
            item(menu, "Lift " + place.part().ref() + "." + place.pin().label(), Task.LIFT, place);
        }
        if (place.net() != null || place.pin() != null) {
            item(menu, "Cut the track here", Task.CUT, place);
            item(menu, "Link from here to\u2026", Task.LINK, place);
            item(menu, "Fit a part from here to\u2026", Task.FIT, place);
        }
        if (onPart) {
            item(menu, "Take the part out", Task.TAKE_OUT, place);
            item(menu, "Replace the part\u2026", Task.REPLACE, place);
            item(menu, "Other value on the board\u2026", Task.OTHER_VALUE, place);
        }
    }

    private void correct(Menu to, Selection place, Facts facts, boolean onPart) {
        if (facts.netlist().doubts().stream().anyMatch(d -> near(d, place))) {
            item(to, "Right as read here", Task.CONFIRM, place);
        }
        if (crossing(facts, place)) {
            item(to, "Junction here", Task.JUNCTION, place);
            item(to, "No junction here", Task.NO_JUNCTION, place);
        }
        if (place.pin() != null) {
            pin(to, place);
        } else if (place.net() != null) {
            item(to, "Join with\u2026", Task.JOIN, place);
            item(to, "Split here", Task.SPLIT, place);
            item(to, "Take this wire off the net", Task.DETACH, place);
            item(to, "Name as drawn\u2026", Task.NAME, place);
        }
        if (onPart) {
            line(to);
            item(to, "Letter the part\u2026", Task.EDIT_PART, place);
            item(to, "Unit of a part\u2026", Task.UNIT, place);
            item(to, "Remove the part", Task.REMOVE_PART, place);
        }
        line(to);
        item(to, "Add a pin here\u2026", Task.ADD_PIN, place);
        item(to, "Add a part\u2026", Task.ADD_PART, null);
        item(to, "Ignore a region\u2026", Task.IGNORE, null);
    }

    private void pin(Menu to, Selection place) {
        String pin = place.part().ref() + "." + place.pin().label();
        item(to, "Join " + pin + " with\u2026", Task.JOIN, place);
        if (place.net() != null) {
            item(to, "Take " + pin + " off the net", Task.DETACH, place);
            item(to, "Name the net as drawn\u2026", Task.NAME, place);
        }
        item(to, "Move the pin\u2026", Task.MOVE_PIN, place);
        item(to, "Letter the pin\u2026", Task.EDIT_PIN, place);
        item(to, "Remove the pin", Task.REMOVE_PIN, place);
    }

    private static void line(Menu to) {
        if (to.getItemCount() > 0) {
            new MenuItem(to, SWT.SEPARATOR);
        }
    }

    private void item(Menu to, String text, Task task, Selection place) {
        MenuItem item = new MenuItem(to, SWT.PUSH);
        item.setText(text.replace("&", "&&"));
        item.setImage(look.icon(task.icon()));
        item.addListener(SWT.Selection, e -> correcting.start(task, place));
    }

    private static boolean near(Doubt d, Selection place) {
        return d.at() != null && d.page() == place.page() && d.at().distance(place.at()) <= REACH + 3;
    }

    /** Whether wires of two directions run by here. */
    private static boolean crossing(Facts facts, Selection place) {
        boolean flat = false;
        boolean upright = false;
        for (Net net : facts.netlist().nets()) {
            for (Wire wire : net.wires()) {
                List<org.probeleaf.schematic.geometry.Point> p = wire.points();
                for (int i = 1; wire.page() == place.page() && i < p.size(); i++) {
                    if (place.at().nearestOn(p.get(i - 1), p.get(i)).distance(place.at()) <= REACH) {
                        boolean lies = Math.abs(p.get(i).x() - p.get(i - 1).x()) > Math.abs(p.get(i).y() - p.get(i - 1).y());
                        flat |= lies;
                        upright |= !lies;
                    }
                }
            }
        }
        return flat && upright;
    }
}
