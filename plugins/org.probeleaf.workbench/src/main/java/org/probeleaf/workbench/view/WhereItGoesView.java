// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.swt.widgets.Composite;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;

/** Every pin on the selected net, drivers first; a double click or Enter goes there. */
public final class WhereItGoesView extends SessionView {

    private Head head;
    private PlainTable<TracedPin> table;

    @Override
    void createContent(Composite parent) {
        Look look = new Look(parent);
        Head.column(parent);
        head = new Head(parent, look);
        table = new PlainTable<>(parent, TracedPin.class, this::go);
        table.column("Pin", 24, 76, p -> p.place().text(), p -> look.icon(icon(p.direction())));
        table.column("Name", 20, 50, TracedPin::name, null);
        table.column("Works as", 24, 80, p -> role(p.direction()), null);
        table.column("Sheet", 14, 52, p -> String.valueOf(p.pin().page()), null);
        table.column("Part", 24, 64, p -> p.part().value(), null);
    }

    @Override
    void refresh() {
        Facts facts = facts().orElse(null);
        Net net = facts == null ? null : session().flatMap(SheetSession::selectedNet).orElse(null);
        List<TracedPin> pins = net == null ? List.of() : facts.pinsOn(net);
        table.show(pins);
        if (net != null) {
            head.show(facts.title(net), words(net, pins));
        } else {
            head.show("No net selected", facts != null && !facts.recognised() ? "Nets can be selected when the sheets"
                    + " have been read." : "Click a wire or a pin on the sheet.");
        }
    }

    private static String words(Net net, List<TracedPin> pins) {
        long drivers = pins.stream().filter(p -> p.direction() == PinDirection.OUT).count();
        long loads = pins.stream().filter(p -> p.direction() == PinDirection.IN).count();
        return count(pins.size(), "pin") + ": " + count(drivers, "driver") + ", " + count(loads, "load")
                + (pins.size() - drivers - loads > 0 ? ", " + (pins.size() - drivers - loads) + " other" : "")
                + "; " + (net.pages().size() == 1 ? "sheet " : "sheets ")
                + net.pages().stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static String count(long n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
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

    private static String role(PinDirection direction) {
        return switch (direction) {
            case OUT -> "drives";
            case IN -> "load";
            case BIDIR -> "both ways";
            case PASSIVE -> "passive";
            case POWER -> "supply";
            case UNKNOWN -> "not known";
        };
    }

    private void go(TracedPin pin) {
        Facts facts = facts().orElse(null);
        if (facts == null || pin.pin().at() == null) {
            return;
        }
        session().ifPresent(s -> {
            s.select(Selection.pin(pin.part(), pin.pin(), facts.net(pin.pin().net()).orElse(null)));
            s.reveal(pin.pin().page(), Box.of(pin.pin().at()).grow(40));
        });
    }

    @Override
    public void selectionChanged() {
        refresh();
    }

    @Override
    public void setFocus() {
        table.focus();
    }
}
