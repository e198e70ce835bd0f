// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * How sheets are marked up.
 *
 * @param author    stands as author on every annotation and in the legend; may be empty
 * @param when      when the sheet is marked up
 * @param zone      in which dates are written
 * @param nets      ids of further nets to emphasise, beside those with a label or a reading
 * @param passwords for each sheet file its password or null; may be shorter than the list of files
 */
public record MarkedSheetOptions(String author, Instant when, ZoneId zone, Set<String> nets, List<String> passwords) {

    public MarkedSheetOptions {
        nets = Set.copyOf(nets);
        passwords = Collections.unmodifiableList(new ArrayList<>(passwords));
    }

    /** An author and a moment, no further nets, no passwords, dates in the zone of this computer. */
    public static MarkedSheetOptions of(String author, Instant when) {
        return new MarkedSheetOptions(author, when, ZoneId.systemDefault(), Set.of(), List.of());
    }

    public MarkedSheetOptions withNets(Set<String> ids) {
        return new MarkedSheetOptions(author, when, zone, ids, passwords);
    }

    public MarkedSheetOptions withPasswords(List<String> list) {
        return new MarkedSheetOptions(author, when, zone, nets, list);
    }

    public MarkedSheetOptions withZone(ZoneId other) {
        return new MarkedSheetOptions(author, when, other, nets, passwords);
    }

    /** The password of a sheet file, or null. */
    public String password(int index) {
        return index < passwords.size() ? passwords.get(index) : null;
    }
}
