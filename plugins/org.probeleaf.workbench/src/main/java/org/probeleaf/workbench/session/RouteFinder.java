// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.UnknownPlaceException;

/**
 * Follows the selected signal. The way is found in the background and stays while one walks along it; it begins anew
 * where something else is selected. Called on the display thread.
 */
public final class RouteFinder {

    private final Executor worker;
    private final Consumer<Runnable> post;
    private final Supplier<Facts> facts;
    private final Runnable tell;
    private Following following = Following.NET;
    private Place from;
    private Route route;
    private int at;
    private int asked;

    /**
     * @param worker where a way is found
     * @param post   runs something on the display thread
     * @param facts  what is known now, or null
     * @param tell   called when there is another route, or another place on it
     */
    RouteFinder(Executor worker, Consumer<Runnable> post, Supplier<Facts> facts, Runnable tell) {
        this.worker = worker;
        this.post = post;
        this.facts = facts;
        this.tell = tell;
    }

    /** How far the signal is followed. */
    public Following following() {
        return following;
    }

    /** Follows it otherwise from now on. */
    public void follow(Following other) {
        if (!following.equals(other)) {
            following = other;
            find();
        }
    }

    /** The way of the signal; empty where no net is selected, or while the way is being found for the first time. */
    public Optional<Route> route() {
        return Optional.ofNullable(route);
    }

    /** The number of the net on the route where one stands. */
    public int at() {
        return at;
    }

    /** One stands at another net of the route. */
    void standAt(int number) {
        at = number;
        tell.run();
    }

    /** Something else is selected. */
    void begin(Selection selection) {
        from = selection == null || selection.net() == null ? null : selection.place();
        at = 0;
        find();
    }

    /** The board or the reading of the sheet may be another. */
    void again() {
        find();
    }

    private void find() {
        asked++;
        Facts now = facts.get();
        if (from == null || now == null || !now.recognised()) {
            show(null);
            return;
        }
        int mine = asked;
        Place place = from;
        Following how = following;
        worker.execute(() -> {
            Route found = found(now, place, how);
            post.accept(() -> {
                if (mine == asked) {
                    show(found);
                }
            });
        });
    }

    private static Route found(Facts facts, Place place, Following how) {
        try {
            return new Route(facts.network().follow(place, how.options()));
        } catch (UnknownPlaceException e) {
            return null;
        }
    }

    private void show(Route next) {
        if (route != next) {
            route = next;
            at = next == null ? 0 : Math.min(at, next.nodes().size() - 1);
            tell.run();
        }
    }
}
