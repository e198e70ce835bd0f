// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import org.probeleaf.trace.follow.Flow;
import org.probeleaf.trace.follow.FollowOptions;

/**
 * How far the selected signal is followed, and which way.
 *
 * @param reach through what
 * @param back  to where it comes from in place of where it goes
 */
public record Following(Reach reach, boolean back) {

    /** The net alone, and on. */
    public static final Following NET = new Following(Reach.NET, false);

    /** Through what a signal is followed. */
    public enum Reach {
        NET("This net", "Only what the selected net itself touches"),
        SERIES("Series parts", "Also through resistors, capacitors, coils, diodes, fuses, links and connectors"),
        GATES("Gates too", "Also through gates and buffers, from their inputs to their outputs");

        private final String title;
        private final String words;

        Reach(String title, String words) {
            this.title = title;
            this.words = words;
        }

        /** What a button for it says. */
        public String title() {
            return title;
        }

        /** The same in a sentence. */
        public String words() {
            return words;
        }
    }

    /** The next wider reach; after the widest the net alone. */
    public Following wider() {
        return with(Reach.values()[(reach.ordinal() + 1) % Reach.values().length]);
    }

    public Following with(Reach other) {
        return new Following(other, back);
    }

    public Following withBack(boolean other) {
        return new Following(reach, other);
    }

    FollowOptions options() {
        FollowOptions through = switch (reach) {
            case NET -> FollowOptions.netOnly();
            case SERIES -> FollowOptions.seriesOnly();
            case GATES -> FollowOptions.all();
        };
        return through.with(back ? Flow.UPSTREAM : Flow.DOWNSTREAM);
    }
}
