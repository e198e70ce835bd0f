// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.time.Instant;
import java.util.Objects;
import java.util.UUID;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/**
 * A waveform captured at a place: a file that the job keeps unchanged, and how it is to be read.
 *
 * @param id       unique in its job
 * @param place    what the person named
 * @param page     1-based page of the anchor
 * @param at       the anchor, in points from the top left of the page as displayed
 * @param fileName the name that the file had, without folders
 * @param sha256   of its bytes, lower-case hexadecimal; finds them in the job
 * @param size     how many bytes it has
 * @param readAs   how its text is to be understood where the technician corrected what was guessed, as import options
 *                 are written; empty where nothing was corrected, never null
 * @param note     a remark; empty where there is none, never null
 * @param when     when it was pinned
 * @param judgedBy what its levels are held against, a logic family or a voltage as it is typed; empty where nobody said,
 *                 never null
 * @param card     where the person moved its card, or null where it is laid out by itself
 */
public record CaptureMark(String id, Place place, int page, Point at, String fileName, String sha256, long size,
        String readAs, String note, Instant when, String judgedBy, Offset card) implements Mark {

    public CaptureMark {
        Objects.requireNonNull(readAs);
        Objects.requireNonNull(note);
        Objects.requireNonNull(judgedBy);
    }

    /** A new mark with an id of its own and its card laid out by itself. */
    public static CaptureMark of(Place place, Anchor anchor, String fileName, String sha256, long size, String readAs,
            String note, Instant when) {
        return new CaptureMark(UUID.randomUUID().toString(), place, anchor.page(), anchor.at(), fileName, sha256, size,
                readAs.strip(), note.strip(), when, "", null);
    }

    /** This mark, to be read otherwise. */
    public CaptureMark withReadAs(String other) {
        return new CaptureMark(id, place, page, at, fileName, sha256, size, other.strip(), note, when, judgedBy,
                card);
    }

    /** This mark, held against other levels. */
    public CaptureMark withJudgedBy(String other) {
        return new CaptureMark(id, place, page, at, fileName, sha256, size, readAs, note, when, other.strip(), card);
    }

    @Override
    public CaptureMark withCard(Offset other) {
        return new CaptureMark(id, place, page, at, fileName, sha256, size, readAs, note, when, judgedBy, other);
    }
}
