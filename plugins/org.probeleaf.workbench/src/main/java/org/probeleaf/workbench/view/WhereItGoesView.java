// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.board.BothSides;
import org.probeleaf.trace.follow.Followed.Node;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.Route;
import org.probeleaf.workbench.session.RouteFinder;
import org.probeleaf.workbench.session.RouteWalk;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;

/**
 * Where the selected signal goes: every pin on its net, drivers first, and as far as it is followed what is reached
 * through their parts, with the reason for each step. Choosing a row goes there; at a lifted pin both sides are offered
 * to measure.
 */
public final class WhereItGoesView extends SessionView {

    private Head head;
    private ReachBar bar;
    private RouteTree tree;
    private Foot foot;
    private Look look;

    @Override
    protected void createContent(Composite parent) {
        look = new Look(parent);
        Head.column(parent);
        head = new Head(parent, look);
        bar = new ReachBar(parent, f -> session().ifPresent(s -> s.routes().follow(f)));
        tree = new RouteTree(parent, this::chosen, this::chosen);
        tree.column("Pin", 46, 170, this::title, this::icon);
        tree.column("Works as", 28, 84, WhereItGoesView::role, null);
        tree.column("Sheet", 9, 42, WhereItGoesView::sheet, null);
        tree.column("Part", 18, 60, r -> r instanceof RouteRow.OfPin p ? p.pin().part().value() : null, null);
        foot = new Foot(parent);
    }

    @Override
    protected void refresh() {
        Facts facts = facts().orElse(null);
        Optional<RouteFinder> routes = session().map(SheetSession::routes);
        routes.ifPresent(r -> bar.show(r.following()));
        Route route = facts == null ? null : routes.flatMap(RouteFinder::route).orElse(null);
        tree.show(route);
        if (route != null) {
            Net net = route.root().net();
            head.show(facts.title(net), words(net, route));
            tree.mark(route.nodes().get(routes.get().at()));
        } else {
            head.show("No net selected", facts != null && !facts.recognised() ? "Nets can be selected when the sheets"
                    + " have been read." : "Click a wire or a pin on the sheet.");
        }
        bothSides();
    }

    private static String words(Net net, Route route) {
        List<TracedPin> pins = route.root().pins();
        long drivers = pins.stream().filter(p -> p.direction() == PinDirection.OUT).count();
        long loads = pins.stream().filter(p -> p.direction() == PinDirection.IN).count();
        int further = route.nodes().size() - 1;
        return count(pins.size(), "pin") + ": " + count(drivers, "driver") + ", " + count(loads, "load")
                + (pins.size() - drivers - loads > 0 ? ", " + (pins.size() - drivers - loads) + " other" : "")
                + "; " + (net.pages().size() == 1 ? "sheet " : "sheets ")
                + net.pages().stream().map(String::valueOf).collect(Collectors.joining(", "))
                + (further == 0 ? "" : ". " + count(further, "net") + (route.back() ? " before it" : " beyond it")
                        + (route.followed().cut() ? ", and more" : ""));
    }

    private static String count(long n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    private String title(RouteRow row) {
        if (row instanceof RouteRow.OfNet net) {
            return number(net.node()) + "  " + facts().map(f -> f.title(net.node().net())).orElse("");
        }
        return row instanceof RouteRow.OfPin pin ? pin.pin().place().text()
                + (pin.pin().name() == null ? "" : "  " + pin.pin().name()) : "";
    }

    private String number(Node node) {
        return session().flatMap(s -> s.routes().route()).map(r -> String.valueOf(r.number(node))).orElse("");
    }

    private Image icon(RouteRow row) {
        return look.icon(row instanceof RouteRow.OfPin pin ? icon(pin.pin().direction())
                : row instanceof RouteRow.OfNet ? "follow" : "step");
    }

    private static String role(RouteRow row) {
        if (row instanceof RouteRow.OfPin pin) {
            return role(pin.pin().direction()) + (pin.stop() == null ? "" : "; " + pin.stop().reason());
        }
        return row instanceof RouteRow.OfNet net ? net.node().step().reason()
                : ((RouteRow.OfEnd) row).stop().reason();
    }

    private static String sheet(RouteRow row) {
        return row instanceof RouteRow.OfPin pin ? String.valueOf(pin.pin().pin().page())
                : row instanceof RouteRow.OfNet net ? net.node().net().pages().stream().map(String::valueOf)
                        .collect(Collectors.joining(", ")) : null;
    }

    static String icon(PinDirection direction) {
        return switch (direction) {
            case OUT -> "pin-out";
            case IN -> "pin-in";
            case BIDIR -> "pin-bidir";
            case PASSIVE, POWER -> "pin-passive";
            case UNKNOWN -> "pin-unknown";
        };
    }

    static String role(PinDirection direction) {
        return switch (direction) {
            case OUT -> "drives";
            case IN -> "load";
            case BIDIR -> "both ways";
            case PASSIVE -> "passive";
            case POWER -> "supply";
            case UNKNOWN -> "not known";
        };
    }

    private void chosen(RouteRow row) {
        SheetSession session = session().orElse(null);
        Route route = session == null ? null : session.routes().route().orElse(null);
        if (route == null) {
            return;
        }
        int number = route.number(row.node());
        if (row instanceof RouteRow.OfPin pin && pin.pin().pin().at() != null) {
            session.standAt(number, Selection.pin(pin.pin().part(), pin.pin().pin(), row.node().net()));
            session.reveal(pin.pin().pin().page(), Box.of(pin.pin().pin().at()).grow(40));
        } else if (row instanceof RouteRow.OfNet) {
            RouteWalk.standAt(session, number);
        }
        String full = row instanceof RouteRow.OfNet || row instanceof RouteRow.OfEnd
                || row instanceof RouteRow.OfPin p && p.stop() != null ? role(row) : "";
        if (!full.isEmpty()) {
            foot.show(PutBackView.capital(full) + ".");
        } else {
            bothSides();
        }
    }

    /** Offers both sides of a lifted pin, to tell its part from the rest of the net. */
    private void bothSides() {
        SheetSession session = session().orElse(null);
        BothSides sides = session == null ? null : session.selection().map(Selection::place)
                .flatMap(p -> facts().map(Facts::board).flatMap(b -> b.bothSides(p))).orElse(null);
        if (sides == null) {
            foot.show("");
            return;
        }
        foot.show(sides.onPin().text() + " is off its pad. Measure again on both sides: if the pin alone is still"
                + " wrong, its part is; if the pad is, something else on the net.");
        if (!session.readOnly()) {
            measure(session, sides.onPin(), "At the pin");
            if (sides.onPad() != null) {
                measure(session, sides.onPad(), "At the pad");
            }
        }
    }

    private void measure(SheetSession session, Place place, String title) {
        foot.button(title, "reading", () -> BoardWalk.measure(getSite().getPage(), session, place));
    }

    @Override
    public void selectionChanged() {
        bothSides();
    }

    @Override
    public void routeChanged() {
        SheetSession session = session().orElse(null);
        Route route = session == null ? null : session.routes().route().orElse(null);
        if (route != null && tree.shows(route)) {
            Node here = route.nodes().get(session.routes().at());
            tree.mark(here);
            if (here.step() != null) {
                foot.show(number(here) + "  " + PutBackView.capital(here.step().reason()) + ".");
            }
        } else {
            refresh();
        }
    }

    @Override
    public void setFocus() {
        tree.focus();
    }
}
