// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

/** The layers that marks lie in, so that a reader can show and hide each sort. */
enum Layer {
    NETS("Marks: traced nets"),
    LABELS("Marks: net names"),
    READINGS("Marks: readings"),
    WAVEFORMS("Marks: waveforms"),
    NOTES("Marks: notes"),
    LEGEND("Marks: legend");

    private final String title;

    Layer(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }
}
