// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

import org.probeleaf.handover.wave.Wave;

/**
 * How sheets are marked up.
 *
 * @param author    stands as author on every annotation and in the legend; may be empty
 * @param when      when the sheet is marked up
 * @param zone      in which dates are written
 * @param nets      ids of further nets to emphasise, beside those with a label or a reading
 * @param waves     captures of the job, for their pictures; one that is not among them is only named
 * @param passwords for each sheet file its password or null; may be shorter than the list of files
 */
public record MarkedSheetOptions(String author, Instant when, ZoneId zone, Set<String> nets, List<Wave> waves,
        List<String> passwords) {

    public MarkedSheetOptions {
        nets = Set.copyOf(nets);
        waves = List.copyOf(waves);
        passwords = Collections.unmodifiableList(new ArrayList<>(passwords));
    }

    /** An author and a moment, no further nets, no passwords, dates in the zone of this computer. */
    public static MarkedSheetOptions of(String author, Instant when) {
        return new MarkedSheetOptions(author, when, ZoneId.systemDefault(), Set.of(), List.of(), List.of());
    }

    public MarkedSheetOptions withNets(Set<String> ids) {
        return new MarkedSheetOptions(author, when, zone, ids, waves, passwords);
    }

    public MarkedSheetOptions withPasswords(List<String> list) {
        return new MarkedSheetOptions(author, when, zone, nets, waves, list);
    }

    public MarkedSheetOptions withWaves(List<Wave> list) {
        return new MarkedSheetOptions(author, when, zone, nets, list, passwords);
    }

    public MarkedSheetOptions withZone(ZoneId other) {
        return new MarkedSheetOptions(author, when, other, nets, waves, passwords);
    }

    /** The password of a sheet file, or null. */
    public String password(int index) {
        return index < passwords.size() ? passwords.get(index) : null;
    }
}
