// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.util.List;

import org.probeleaf.job.details.Hazard;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.expectation.FamilyLevels;
import org.probeleaf.job.expectation.LogicFamily;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.expectation.Range;
import org.probeleaf.job.expectation.Tolerance;
import org.probeleaf.job.expectation.Verdict;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.Circumstances;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/** Marks and job heads as JSON objects. Values are kept as understood at the time, not parsed anew from their text. */
final class MarkCodec {

    /** How the reason of a person's verdict begins. */
    private static final String SAID = "said to be ";

    private MarkCodec() {
    }

    static Body details(JobDetails d) {
        List<String> hazards = d.hazards().stream().map(Hazard::key).toList();
        return Body.empty().with("unit", d.unit()).with("customer", d.customer()).with("complaint", d.complaint())
                .with("technician", d.technician()).with("hazards", hazards);
    }

    static JobDetails details(Body b) {
        return new JobDetails(b.text("unit"), b.text("customer"), b.text("complaint"), b.text("technician"),
                b.texts("hazards").stream().map(Hazard::parse).toList());
    }

    static Body label(LabelMark m) {
        return mark(m).with("text", m.text());
    }

    static LabelMark label(Body b) {
        return new LabelMark(b.text("id"), b.place("place"), b.whole("page"), b.point("at"), b.text("text"),
                b.instant("when"), b.offset("card"));
    }

    static Body note(NoteMark m) {
        return mark(m).with("text", m.text());
    }

    static NoteMark note(Body b) {
        return new NoteMark(b.text("id"), b.place("place"), b.whole("page"), b.point("at"), b.text("text"),
                b.instant("when"), b.offset("card"));
    }

    static Body reading(ReadingMark m) {
        return mark(m).with("typed", m.typed()).with("value", quantity(m.value())).with("remark", m.remark())
                .with("conditions", orNull(m.circumstances().conditions()))
                .with("instrument", orNull(m.circumstances().instrument()))
                .with("expectation", expectation(m.expectation()))
                .with("judged", m.overruled() ? verdict(m.judged()) : null).with("verdict", verdict(m.verdict()));
    }

    private static String orNull(String text) {
        return text.isEmpty() ? null : text;
    }

    private static Body verdict(Verdict v) {
        return v == null ? null : Body.empty().with("outcome", v.outcome().name()).with("reason", v.reason());
    }

    private static Verdict verdict(Body b, String key) {
        return b.has(key) ? new Verdict(Outcome.valueOf(b.body(key).text("outcome")), b.body(key).text("reason")) : null;
    }

    static ReadingMark reading(Body b) {
        Verdict verdict = verdict(b, "verdict");
        Expectation expectation = b.has("expectation") ? expectation(b.body("expectation")) : null;
        Quantity value = quantity(b.body("value"));
        Circumstances circumstances = new Circumstances(b.has("conditions") ? b.text("conditions") : "",
                b.has("instrument") ? b.text("instrument") : "");
        return new ReadingMark(b.text("id"), b.place("place"), b.whole("page"), b.point("at"), b.text("typed"), value,
                b.text("remark"), circumstances, expectation, judged(b, expectation, value, verdict), verdict,
                b.instant("when"), b.offset("card"));
    }

    /** What followed from the value: it is kept apart only where the person said otherwise, and by older versions not at all. */
    private static Verdict judged(Body b, Expectation expectation, Quantity value, Verdict verdict) {
        if (expectation == null) {
            return null;
        }
        boolean said = verdict != null && verdict.reason().startsWith(SAID);
        return b.has("judged") ? verdict(b, "judged") : said ? expectation.judge(value) : verdict;
    }

    static Body capture(CaptureMark m) {
        return mark(m).with("fileName", m.fileName()).with("sha256", m.sha256()).with("size", m.size())
                .with("readAs", m.readAs()).with("note", m.note()).with("judgedBy", m.judgedBy().isEmpty() ? null : m.judgedBy());
    }

    static CaptureMark capture(Body b) {
        return new CaptureMark(b.text("id"), b.place("place"), b.whole("page"), b.point("at"), b.text("fileName"),
                b.text("sha256"), (long) b.number("size"), b.text("readAs"), b.text("note"), b.instant("when"),
                b.has("judgedBy") ? b.text("judgedBy") : "", b.offset("card"));
    }

    private static Body mark(Mark m) {
        return Body.empty().with("id", m.id()).with("place", m.place()).with("page", m.page()).with("at", m.at())
                .with("when", m.when()).with("card", m.card());
    }

    private static Body quantity(Quantity q) {
        return Body.empty().with("kind", q.kind().name()).with("value", q.value());
    }

    private static Quantity quantity(Body b) {
        return Quantity.of(QuantityKind.valueOf(b.text("kind")), b.number("value"));
    }

    private static Body expectation(Expectation e) {
        if (e == null) {
            return null;
        }
        Body b = Body.empty().with("text", e.text());
        if (e instanceof Tolerance t) {
            return b.with("nominal", quantity(t.nominal())).with("margin", t.margin());
        }
        if (e instanceof Range r) {
            return b.with("kind", r.kind().name()).with("low", r.low()).with("high", r.high());
        }
        LogicFamily f = ((FamilyLevels) e).family();
        return b.with("family", Body.empty().with("name", f.name()).with("supply", f.supply())
                .with("vilMax", f.vilMax()).with("vihMin", f.vihMin()).with("volMax", f.volMax())
                .with("vohMin", f.vohMin()));
    }

    private static Expectation expectation(Body b) {
        if (b.has("nominal")) {
            return new Tolerance(quantity(b.body("nominal")), b.number("margin"), b.text("text"));
        }
        if (b.has("family")) {
            Body f = b.body("family");
            return new FamilyLevels(new LogicFamily(f.text("name"), f.number("supply"), f.number("vilMax"),
                    f.number("vihMin"), f.number("volMax"), f.number("vohMin")));
        }
        return new Range(QuantityKind.valueOf(b.text("kind")), b.number("low"), b.number("high"), b.text("text"));
    }
}
