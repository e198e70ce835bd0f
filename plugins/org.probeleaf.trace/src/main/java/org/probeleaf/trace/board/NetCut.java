// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Junction;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Wire;

/**
 * Cuts a net at a spot of its drawn wires into what hangs together on each side, as {@link NetPieces} tells. Where the
 * drawing leaves a gap that its reading closed, what lies beyond goes with the side whose ink is nearest; what is on
 * other pages goes with the side that bears the net's name.
 */
final class NetCut {

    private final Net net;
    private final NetPieces pieces;
    /** For each piece the side that it is on: 0, 1, or -1 where not known yet. */
    private final int[] side;

    /**
     * A net in two.
     *
     * @param kept  what keeps the net's id: the side that bears its name, else the one with more pins
     * @param other the other side, with the id asked for
     * @param pins  the pins on the other side
     */
    record Sides(Net kept, Net other, List<Pin> pins) {
    }

    private NetCut(Net net, NetPieces pieces, List<Integer> ends) {
        this.net = net;
        this.pieces = pieces;
        this.side = new int[pieces.size()];
        Arrays.setAll(side, i -> pieces.together(i, ends.get(0)) ? 0 : pieces.together(i, ends.get(1)) ? 1 : -1);
    }

    /** The nearest spot on a wire of the net, or null where none is on that page. */
    static Spot onWire(Net net, Spot near) {
        Point best = null;
        for (Wire wire : net.wires()) {
            for (int i = 1; wire.page() == near.page() && i < wire.points().size(); i++) {
                Point p = near.at().nearestOn(wire.points().get(i - 1), wire.points().get(i));
                if (best == null || p.distance(near.at()) < best.distance(near.at())) {
                    best = p;
                }
            }
        }
        return best == null ? null : new Spot(near.page(), best);
    }

    /**
     * Cuts.
     *
     * @param net  the net
     * @param pins the pins on it
     * @param cut  the spot, on one of its wires
     * @param id   for the side that does not keep the net's id
     * @return the sides, or null where they hang together another way
     * @throws RefusedException where several wires meet at the spot
     */
    static Sides cut(Net net, List<Pin> pins, Spot cut, String id) throws RefusedException {
        NetPieces pieces = new NetPieces(net, pins, cut);
        List<Integer> ends = pieces.endsAtCut();
        if (ends.size() < 2) {
            return null;
        }
        NetCut netCut = new NetCut(net, pieces, ends);
        netCut.joinOverGaps();
        return netCut.written(id);
    }

    /** Takes group after group to the nearest side, as J. Prim's algorithm grows a tree; then what no page joins. */
    private void joinOverGaps() {
        double[] distance = new double[side.length];
        Arrays.fill(distance, Double.MAX_VALUE);
        int[] to = new int[side.length];
        for (int i = 0; i < side.length; i++) {
            if (side[i] >= 0) {
                measure(i, distance, to);
            }
        }
        for (int next = nearest(distance); next >= 0; next = nearest(distance)) {
            int joining = next;
            int[] members = IntStream.range(0, side.length).filter(i -> pieces.together(i, joining)).toArray();
            for (int m : members) {
                side[m] = to[joining];
            }
            for (int m : members) {
                measure(m, distance, to);
            }
        }
        int home = home();
        for (int i = 0; i < side.length; i++) {
            side[i] = side[i] < 0 ? home : side[i];
        }
    }

    private void measure(int from, double[] distance, int[] to) {
        for (int i = 0; i < side.length; i++) {
            if (side[i] < 0 && pieces.piece(i).page() == pieces.piece(from).page()) {
                double d = pieces.piece(i).distance(pieces.piece(from));
                if (d < distance[i]) {
                    distance[i] = d;
                    to[i] = side[from];
                }
            }
        }
    }

    private int nearest(double[] distance) {
        int best = -1;
        for (int i = 0; i < side.length; i++) {
            if (side[i] < 0 && distance[i] < (best < 0 ? Double.MAX_VALUE : distance[best])) {
                best = i;
            }
        }
        return best;
    }

    /** The side that the net's id and whatever is not drawn stay with. */
    private int home() {
        boolean first = bearsName(0);
        if (first != bearsName(1)) {
            return first ? 0 : 1;
        }
        long on = IntStream.range(0, pieces.pins().size()).filter(i -> side[pieces.wires() + i] == 0).count();
        return 2 * on >= pieces.pins().size() ? 0 : 1;
    }

    private boolean bearsName(int which) {
        return IntStream.range(0, net.labels().size()).anyMatch(i -> net.labels().get(i).text().equals(net.name())
                && side[pieces.labels() + i] == which);
    }

    private Sides written(String id) {
        int stays = home();
        List<Pin> gone = IntStream.range(0, pieces.pins().size())
                .filter(i -> side[pieces.wires() + i] != stays).mapToObj(pieces.pins()::get).toList();
        String name = labels(1 - stays).stream().filter(l -> l.kind() != LabelKind.BUS).map(NetLabel::text)
                .findFirst().orElse(null);
        return new Sides(net(stays, net.id(), net.name()), net(1 - stays, id, name), gone);
    }

    private List<NetLabel> labels(int which) {
        return IntStream.range(0, net.labels().size()).filter(i -> side[pieces.labels() + i] == which)
                .mapToObj(net.labels()::get).toList();
    }

    private Net net(int which, String id, String name) {
        List<Wire> wires = wires(which);
        List<Junction> junctions = net.junctions().stream().filter(j -> wires.stream().anyMatch(w -> lies(w, j)))
                .toList();
        List<Integer> pages = IntStream.range(0, side.length).filter(i -> side[i] == which)
                .mapToObj(i -> pieces.piece(i).page()).distinct().sorted().toList();
        return new Net(id, name, pages, wires, junctions, labels(which), net.confidence());
    }

    /** The wires of a side: as they were, but for the one that is cut. */
    private List<Wire> wires(int which) {
        List<Wire> wires = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        for (int i = 0; i < pieces.wires(); i++) {
            if (side[i] != which) {
                continue;
            }
            if (run.isEmpty()) {
                run.add(pieces.piece(i).a());
            }
            run.add(pieces.piece(i).b());
            boolean ends = i + 1 == pieces.wires() || pieces.wireOf(i + 1) != pieces.wireOf(i) || side[i + 1] != which;
            if (ends) {
                wires.add(new Wire(pieces.piece(i).page(), run));
                run.clear();
            }
        }
        return wires;
    }

    private static boolean lies(Wire wire, Junction j) {
        for (int i = 1; i < wire.points().size(); i++) {
            if (wire.page() == j.page() && new Piece(j.page(), wire.points().get(i - 1), wire.points().get(i))
                    .distance(j.at()) <= 2 * NetPieces.TOUCH) {
                return true;
            }
        }
        return false;
    }
}
