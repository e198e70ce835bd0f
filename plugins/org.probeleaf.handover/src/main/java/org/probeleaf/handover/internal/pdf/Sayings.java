// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.util.stream.Collectors;

import org.probeleaf.handover.internal.paint.Sign;
import org.probeleaf.handover.internal.paint.WaveWords;
import org.probeleaf.handover.wave.Wave;
import org.probeleaf.job.details.Hazard;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;

/** What annotations say in full, for readers that list them and for people who cannot see them. */
final class Sayings {

    private Sayings() {
    }

    static String of(ReadingMark reading) {
        StringBuilder b = new StringBuilder(reading.place().text()).append(": ").append(reading.shown());
        if (!reading.remark().isEmpty()) {
            b.append("\n").append(reading.remark());
        }
        if (!reading.circumstances().conditions().isEmpty()) {
            b.append("\nconditions: ").append(reading.circumstances().conditions());
        }
        if (!reading.circumstances().instrument().isEmpty()) {
            b.append("\nread with: ").append(reading.circumstances().instrument());
        }
        if (reading.expectation() != null) {
            b.append("\nexpected: ").append(reading.expectation().text());
        }
        if (reading.verdict() != null) {
            b.append("\n").append(Sign.of(reading.verdict()).words()).append(": ").append(reading.verdict().reason());
        }
        return b.toString();
    }

    /** @param wave as it was read, or null where nobody read it */
    static String of(CaptureMark capture, Wave wave) {
        StringBuilder b = new StringBuilder(capture.place().text()).append(": waveform ").append(capture.fileName());
        if (wave != null) {
            b.append("\n").append(WaveWords.line(wave));
            wave.first().ifPresent(t -> t.judgement().reasons().forEach(r -> b.append("\n").append(r)));
        }
        if (!capture.note().isEmpty()) {
            b.append("\n").append(capture.note());
        }
        return b.toString();
    }

    static String of(NoteMark note) {
        return note.place().text() + ": " + note.text();
    }

    static String of(Net net, String title, Netlist netlist) {
        long pins = netlist.parts().stream().flatMap(p -> p.pins().stream()).filter(p -> net.id().equals(p.net()))
                .count();
        String pages = net.pages().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return "Net " + title + ": " + pins + (pins == 1 ? " pin" : " pins") + (pages.isEmpty() ? ""
                : net.pages().size() == 1 ? ", page " + pages : ", pages " + pages);
    }

    /** The cautions of a job in full, or an empty text. */
    static String cautions(JobDetails details) {
        return details.hazards().isEmpty() ? "" : details.hazards().stream()
                .map(h -> "\n" + h.title() + ": " + h.caution()).collect(Collectors.joining()) + "\n" + Hazard.CLOSING;
    }
}
