// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

import com.fasterxml.jackson.core.JsonGenerator;

import org.probeleaf.cli.io.SheetTiming;

/** How long each page took: {@code {"sheets": [{"file", "page", "open", "draw", "recognise", "total"}]}}, seconds. */
public final class TimingJson {

    private TimingJson() {
    }

    public static void write(JsonGenerator out, List<SheetTiming> timings) throws IOException {
        out.writeArrayFieldStart("sheets");
        for (SheetTiming t : timings) {
            out.writeStartObject();
            out.writeStringField("file", t.file());
            out.writeNumberField("page", t.page());
            seconds(out, "open", t.open());
            seconds(out, "draw", t.draw());
            seconds(out, "recognise", t.recognise());
            seconds(out, "total", t.total());
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private static void seconds(JsonGenerator out, String key, double value) throws IOException {
        out.writeNumberField(key, BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP));
    }
}
