// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.time.Instant;
import java.util.UUID;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/**
 * A net label of the technician's own.
 *
 * @param id    unique in its job
 * @param place what the person named
 * @param page  1-based page of the anchor
 * @param at    the anchor, in points from the top left of the page as displayed
 * @param text  the name, never blank
 * @param when  when it was made
 * @param card  where the person moved its card, or null where it is laid out by itself
 */
public record LabelMark(String id, Place place, int page, Point at, String text, Instant when, Offset card)
        implements Mark {

    public LabelMark {
        text = text.strip();
        if (text.isEmpty()) {
            throw new IllegalArgumentException("there is no text; type what it should say");
        }
    }

    /** A new mark with an id of its own and its card laid out by itself. */
    public static LabelMark of(Place place, Anchor anchor, String text, Instant when) {
        return new LabelMark(UUID.randomUUID().toString(), place, anchor.page(), anchor.at(), text, when, null);
    }

    /** This mark with another text. */
    public LabelMark withText(String other) {
        return new LabelMark(id, place, page, at, other, when, card);
    }

    @Override
    public LabelMark withCard(Offset other) {
        return new LabelMark(id, place, page, at, text, when, other);
    }
}
