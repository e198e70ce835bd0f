// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.List;

/**
 * What a reader understood and assumed, for the person to agree with or to correct by {@link ImportOptions}.
 *
 * @param format  what the file is taken for
 * @param assumed one sentence each, in the order in which they matter
 */
public record ImportNotes(String format, List<String> assumed) {

    public ImportNotes {
        assumed = List.copyOf(assumed);
    }
}
