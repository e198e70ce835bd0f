// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.drive;

/** What makes the levels of a net, and whether it can let go of it. */
public enum DriverKind {
    /** No pin is known to drive the net. */
    NONE_KNOWN("no known driver"),
    /** One output that always drives, or several that always say the same. */
    PUSH_PULL("push-pull"),
    /** Outputs that can let go of the net, so that others may have it. */
    THREE_STATE("three-state"),
    /** Outputs that only pull down; a resistor pulls up. */
    OPEN_COLLECTOR("open collector"),
    /** An output that never lets go, with others against it. */
    CONTENTION("several drivers at once");

    private final String title;

    DriverKind(String title) {
        this.title = title;
    }

    /** Its name for a person, in lower case. */
    public String title() {
        return title;
    }
}
