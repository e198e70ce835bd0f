// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import java.util.List;

/**
 * What follows from what was seen.
 *
 * @param suspects  the parts that may be to blame, the likeliest first; empty where nothing is wrong
 * @param diagnoses the least sets of parts that explain all that was seen, as designators; the smallest first, then the
 *                  likeliest
 * @param next      where to probe next, or null where probing tells no more
 * @param conflicts the least sets of parts of which not all can be sound, as far as they were looked for
 * @param notes     what else a person should know, in sentences
 */
public record Finding(List<Suspect> suspects, List<List<String>> diagnoses, NextProbe next,
        List<List<String>> conflicts, List<String> notes) {

    public Finding {
        suspects = List.copyOf(suspects);
        diagnoses = diagnoses.stream().map(List::copyOf).toList();
        conflicts = conflicts.stream().map(List::copyOf).toList();
        notes = List.copyOf(notes);
    }
}
