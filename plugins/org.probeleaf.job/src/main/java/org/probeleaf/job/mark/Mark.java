// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.time.Instant;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/** Something that a person pinned to a sheet. */
public sealed interface Mark permits LabelMark, NoteMark, ReadingMark, CaptureMark {

    /** Unique in its job. */
    String id();

    /** What the person named. */
    Place place();

    /** 1-based page of the anchor. */
    int page();

    /** The anchor, in points from the top left of the page as displayed. */
    Point at();

    /** When it was made. */
    Instant when();

    /** Where the person moved its card, or null where it is laid out by itself. */
    Offset card();

    /** This mark with its card elsewhere; null lays it out by itself again. */
    Mark withCard(Offset other);
}
