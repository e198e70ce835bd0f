// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.follow.Flow;
import org.probeleaf.trace.follow.Followed;
import org.probeleaf.trace.follow.Followed.Node;

/** A signal as it was followed, its nets numbered in the order in which the tree is read; the first net is 0. */
public final class Route {

    private final Followed followed;
    private final List<Node> nodes;
    private final Map<Node, Integer> numbers = new IdentityHashMap<>();

    Route(Followed followed) {
        this.followed = followed;
        this.nodes = followed.nodes();
        nodes.forEach(n -> numbers.put(n, numbers.size()));
    }

    public Followed followed() {
        return followed;
    }

    public Node root() {
        return followed.root();
    }

    /** The nets, each under its number. */
    public List<Node> nodes() {
        return nodes;
    }

    /** The number of a net of this route. */
    public int number(Node node) {
        return numbers.get(node);
    }

    /** Whether it was followed against the signal. */
    public boolean back() {
        return followed.options().flow() == Flow.UPSTREAM;
    }

    /** The pin of the part between through which a net was reached, on that net; null at the first net. */
    public TracedPin arrival(Node node) {
        return node.step() == null ? null : back() ? node.step().in() : node.step().out();
    }

    /** The pin on the net before, at which the way to a net leaves it; null at the first net. */
    public TracedPin departure(Node node) {
        return node.step() == null ? null : back() ? node.step().out() : node.step().in();
    }
}
