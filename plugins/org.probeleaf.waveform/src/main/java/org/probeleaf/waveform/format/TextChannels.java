// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;
import org.probeleaf.waveform.measure.Si;

/** Makes channels of the columns of a text once they are filled. */
final class TextChannels {

    private final TextBody body;
    private final List<Column> columns;
    private final ImportOptions options;
    private final Preamble preamble;
    private final List<String> notes;
    private final Map<Integer, TimeBase> clocks = new HashMap<>();

    TextChannels(TextBody body, List<Column> columns, ImportOptions options, Preamble preamble, List<String> notes) {
        this.body = body;
        this.columns = columns;
        this.options = options;
        this.preamble = preamble;
        this.notes = notes;
    }

    Capture build() throws CaptureException {
        List<Channel> channels = new ArrayList<>();
        Set<String> used = new HashSet<>();
        for (int c = 0; c < columns.size(); c++) {
            Column column = columns.get(c);
            if (column.role() == Column.Role.VALUE) {
                Samples samples = scaled(body.values(c).build());
                String unit = Double.isNaN(options.scale()) ? column.unit() : "V";
                channels.add(Channel.of(unique(column.name(), used), unit, times(column.clock(), samples.size()), samples));
            }
        }
        if (channels.isEmpty()) {
            throw CaptureException.row(1, "there is a column of times but none of values, where at least one was expected");
        }
        body.tell(notes);
        return new Capture(channels, List.of());
    }

    private static String unique(String name, Set<String> used) {
        String unique = name;
        for (int n = 2; !used.add(unique); n++) {
            unique = name + " " + n;
        }
        return unique;
    }

    private Samples scaled(Samples samples) {
        if (Double.isNaN(options.scale())) {
            return samples;
        }
        double[] all = samples.toArray();
        for (int i = 0; i < all.length; i++) {
            all[i] *= options.scale();
        }
        return Samples.of(all);
    }

    private TimeBase times(int clock, int size) {
        return clocks.computeIfAbsent(clock, c -> base(c, size));
    }

    private TimeBase base(int column, int size) {
        if (!Double.isNaN(options.interval())) {
            notes.add("Samples are " + Si.text(options.interval(), "s") + " apart, as said.");
            return new TimeBase.Uniform(0, options.interval(), size);
        }
        TimeBase base = column < 0 ? null : body.clock(column).build();
        if (base instanceof TimeBase.Uniform u) {
            notes.add("Column " + (column + 1) + " is the time; samples are " + Si.text(u.interval(), "s") + " apart"
                    + (body.clock(column).rounded() ? ", the times being rounded." : "."));
            return u;
        }
        if (base != null) {
            notes.add("Column " + (column + 1) + " is the time; samples are unevenly spaced, as a rule "
                    + Si.text(base.interval(), "s") + " apart.");
            return base;
        }
        if (preamble.said() != null) {
            notes.add("Samples are " + Si.text(preamble.interval(), "s") + " apart, by \"" + preamble.said() + "\".");
            return new TimeBase.Uniform(preamble.start(), preamble.interval(), size);
        }
        notes.add("Nothing tells how far apart the samples are; 1 s is assumed, and all times count samples.");
        return new TimeBase.Uniform(0, 1, size);
    }
}
