// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Marks;

/**
 * Pins a net label.
 *
 * @param label the new mark
 */
public record AddLabel(LabelMark label) implements Change {

    @Override
    public Instant when() {
        return label.when();
    }

    @Override
    public String words(Marks before) {
        return Words.of(label);
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withLabels(Marks.added(before.labels(), label));
    }
}
