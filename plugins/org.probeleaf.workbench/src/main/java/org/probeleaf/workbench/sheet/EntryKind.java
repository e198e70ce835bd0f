// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

/** What is typed on the sheet. */
public enum EntryKind {
    /** A name for the net. */
    NAME("name", "Name this net"),
    /** A note. */
    NOTE("note", "Note"),
    /** A value measured. */
    READING("reading", "Reading, as on the bench: 11.8V, 3k3, 2.2V flat");

    private final String icon;
    private final String hint;

    EntryKind(String icon, String hint) {
        this.icon = icon;
        this.hint = hint;
    }

    String icon() {
        return icon;
    }

    String hint() {
        return hint;
    }
}
