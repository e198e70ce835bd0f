// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

import com.fasterxml.jackson.core.JsonGenerator;

import org.probeleaf.schematic.partbook.LogicLevels;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.drive.DriveBudget;
import org.probeleaf.trace.drive.Drivers;
import org.probeleaf.trace.drive.Pull;
import org.probeleaf.trace.drive.PullUp;

/** What drives a net and whether it carries its loads, as JSON; what is not known is null. */
final class DriveJson {

    private DriveJson() {
    }

    static void write(JsonGenerator out, Drivers drivers, List<DriveBudget> budgets) throws IOException {
        out.writeObjectFieldStart("drive");
        out.writeStringField("kind", drivers.kind().title());
        out.writeStringField("reason", drivers.reason());
        places(out, "drivers", drivers.pins());
        out.writeArrayFieldStart("pulls");
        for (Pull pull : drivers.pulls()) {
            out.writeStartObject();
            out.writeStringField("at", pull.at().place().text());
            out.writeStringField("to", pull.to().title());
            number(out, "ohms", pull.ohms());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("budgets");
        for (DriveBudget budget : budgets) {
            budget(out, budget);
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private static void budget(JsonGenerator out, DriveBudget budget) throws IOException {
        out.writeStartObject();
        out.writeStringField("driver", budget.driver().place().text());
        out.writeStringField("family", name(budget.levels()));
        Optional<Boolean> carries = budget.carries();
        if (carries.isPresent()) {
            out.writeBooleanField("carries", carries.get());
        } else {
            out.writeNullField("carries");
        }
        number(out, "use", budget.use());
        number(out, "high_A", budget.high());
        number(out, "low_A", budget.low());
        number(out, "can_high_A", budget.levels() == null || budget.lets() ? Double.NaN : budget.drive().ioh());
        number(out, "can_low_A", budget.levels() == null ? Double.NaN : budget.drive().iol());
        number(out, "margin_high_A", budget.marginHigh());
        number(out, "margin_low_A", budget.marginLow());
        out.writeArrayFieldStart("loads");
        for (DriveBudget.Load load : budget.loads()) {
            out.writeStartObject();
            out.writeStringField("at", load.at().place().text());
            out.writeStringField("family", name(load.levels()));
            number(out, "high_A", load.high());
            number(out, "low_A", load.low());
            out.writeEndObject();
        }
        out.writeEndArray();
        places(out, "unknown", budget.unknown());
        if (budget.pullUp().isPresent()) {
            PullUp pullUp = budget.pullUp().get();
            out.writeObjectFieldStart("pull_up");
            number(out, "least_ohm", pullUp.least());
            number(out, "greatest_ohm", pullUp.greatest());
            out.writeEndObject();
        }
        out.writeEndObject();
    }

    private static String name(LogicLevels levels) {
        return levels == null ? null : levels.name();
    }

    private static void places(JsonGenerator out, String key, List<TracedPin> pins) throws IOException {
        out.writeArrayFieldStart(key);
        for (TracedPin pin : pins) {
            out.writeString(pin.place().text());
        }
        out.writeEndArray();
    }

    /** A number without the noise of binary fractions, to twelve digits after the point. */
    private static void number(JsonGenerator out, String key, double value) throws IOException {
        if (Double.isFinite(value)) {
            out.writeNumberField(key, Math.round(value * 1e12) / 1e12);
        } else {
            out.writeNullField(key);
        }
    }
}
