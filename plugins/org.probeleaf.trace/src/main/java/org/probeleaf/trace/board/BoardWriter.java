// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.trace.board.WorkingPart.WorkingPin;

/** Writes down what a board has become. */
final class BoardWriter {

    private final WorkingBoard board;
    private final Netlist netlist;

    BoardWriter(WorkingBoard board) {
        this.board = board;
        this.netlist = netlist(board);
    }

    Netlist netlist() {
        return netlist;
    }

    /** The netlist; the drawing's own where nothing is changed. */
    static Netlist netlist(WorkingBoard board) {
        List<Part> parts = new ArrayList<>();
        Set<String> used = new HashSet<>();
        for (WorkingPart part : board.parts()) {
            if (!part.out) {
                parts.add(part.now(board.nets));
                parts.get(parts.size() - 1).pins().forEach(p -> used.add(p.net()));
            }
        }
        Netlist d = board.drawn;
        List<Net> nets = board.nets.all();
        nets.removeIf(n -> n.wires().isEmpty() && n.labels().isEmpty() && !used.contains(n.id())
                && d.net(n.id()).isEmpty());
        boolean same = parts.equals(d.parts()) && nets.equals(d.nets());
        return same ? d : new Netlist(d.file(), d.sha256(), d.sheets(), parts, nets, d.doubts());
    }

    List<LoosePin> loosePins() {
        List<LoosePin> all = new ArrayList<>();
        for (WorkingPart part : board.parts()) {
            Part now = part.out ? null : part.now(board.nets);
            for (int i = 0; now != null && i < part.pins.size(); i++) {
                WorkingPin pin = part.pins.get(i);
                if (pin.loose()) {
                    Net pad = pin.pad == null ? null : board.nets.net(pin.pad);
                    all.add(new LoosePin(now, now.pins().get(i), pad, !pin.lifted));
                }
            }
        }
        return List.copyOf(all);
    }

    List<Part> removed() {
        List<Part> all = new ArrayList<>(board.displaced());
        for (WorkingPart part : board.parts()) {
            if (part.out && !part.fitted) {
                all.add(part.part);
            }
        }
        return List.copyOf(all);
    }

    List<Part> fitted() {
        List<Part> all = new ArrayList<>();
        for (WorkingPart part : board.parts()) {
            if (part.fitted && !part.out) {
                all.add(part.now(board.nets));
            }
        }
        return List.copyOf(all);
    }

    List<ChangedValue> values() {
        List<ChangedValue> all = new ArrayList<>();
        for (WorkingPart part : board.parts()) {
            if (!part.out && !part.fitted && !Objects.equals(part.value, part.part.value())) {
                all.add(new ChangedValue(part.part.ref(), part.part.value(), part.value));
            }
        }
        return List.copyOf(all);
    }

    List<LinkMark> links() {
        return board.links.stream().map(l -> new LinkMark(l.change(), l.from(), l.to(), board.nets.current(l.net())))
                .toList();
    }

    List<CutMark> cuts() {
        return board.cuts.stream().map(c -> new CutMark(c.change(), c.at(),
                c.nets().stream().map(board.nets::current).distinct().toList())).toList();
    }
}
