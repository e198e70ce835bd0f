// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;
import java.util.Set;

import org.probeleaf.drawing.SheetFile;
import org.probeleaf.job.Boards;
import org.probeleaf.job.JobSheet;
import org.probeleaf.job.JobState;
import org.probeleaf.job.SheetReading;
import org.probeleaf.job.details.Hazard;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.Offset;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.schematic.place.Place;

/** A job with marks of every kind on its first page, and what comes of it. */
final class Marked {

    static final Instant WHEN = Instant.parse("2026-03-01T09:30:00Z");

    private Marked() {
    }

    /** The state of a job with one sheet file of so many pages. */
    static JobState state(int pages) {
        Netlist netlist = new Netlist("board.pdf", "", List.of(),
                List.of(new Part("IC4", "Z80", List.of(new PartUnit(null, 1, new Box(10, 200, 40, 300))),
                        List.of(Pin.drawn("21", "/RD", null, 1, new Point(60, 220), "N1")))),
                List.of(new Net("N1", "/RD", List.of(1), List.of(new Wire(1, List.of(new Point(60, 220),
                        new Point(240, 220), new Point(240, 90)))), List.of(), List.of(), 1)),
                List.of());
        Anchor pin = new Anchor(1, new Point(60, 220));
        LabelMark label = LabelMark.of(Place.parse("net:/RD"), new Anchor(1, new Point(150, 220)), "/RD strobe", WHEN);
        NoteMark note = NoteMark.of(Place.parse("1@120,150"), new Anchor(1, new Point(120, 150)),
                "Leg 21 lifted \u2013 \u03a9 \u00b1 \u00b5 \u0416", WHEN);
        NoteMark moved = NoteMark.of(Place.parse("1@120,150"), new Anchor(1, new Point(120, 150)), "moved by hand",
                WHEN)
                .withCard(new Offset(40, -90));
        return new JobState(new JobDetails("Tide logger", "", "", "M. Kestrel", List.of(Hazard.MAINS)),
                List.of(new JobSheet(0, "board.pdf", "", 1, pages)), SheetReading.of(netlist, List.of()), List.of(label),
                List.of(note, moved),
                List.of(reading(pin, "2.2V flat", "74LS"), reading(pin, "5.03", "5V\u00b15%"),
                        reading(pin, "3k3", "1k..2k"), reading(pin, "H", null)),
                List.of(), Boards.of(netlist, List.of()), List.of(), null, null, 1);
    }

    private static ReadingMark reading(Anchor at, String value, String expected) {
        return ReadingMark.of(Place.parse("IC4.21"), at, value, "", expected == null ? null
                : Expectation.parse(expected), WHEN);
    }

    static MarkedSheetOptions options(String password) {
        return MarkedSheetOptions.of("M. Kestrel", WHEN).withZone(ZoneOffset.UTC).withNets(Set.of())
                .withPasswords(Collections.singletonList(password));
    }

    /** Marks a sheet up without hazards, which would put a legend on every page. */
    static byte[] markFirstPage(byte[] sheet, Path folder) throws IOException {
        JobState s;
        try (SheetFile file = SheetFile.open(sheet, "board.pdf", null)) {
            s = state(file.pageCount());
        }
        JobState calm = new JobState(s.details().withHazards(List.of()), s.sheets(), s.sheetReading(), s.labels(),
                s.notes(), s.readings(), s.captures(), s.boards(), s.log(), null, null, 1);
        return Files.readAllBytes(MarkedSheet.write(calm, List.of(sheet), options(null), folder).get(0));
    }

    /** Marks a sheet up and gives the bytes. */
    static byte[] mark(byte[] sheet, String password, Path folder) throws IOException {
        int pages;
        try (SheetFile file = SheetFile.open(sheet, "board.pdf", password)) {
            pages = file.pageCount();
        }
        return Files.readAllBytes(MarkedSheet.write(state(pages), List.of(sheet), options(password), folder).get(0));
    }
}
