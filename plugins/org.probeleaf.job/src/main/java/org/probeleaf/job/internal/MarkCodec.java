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
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/** Marks and job heads as JSON objects. Values are kept as understood at the time, not parsed anew from their text. */
final class MarkCodec {

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
        Body verdict = m.verdict() == null ? null
                : Body.empty().with("outcome", m.verdict().outcome().name()).with("reason", m.verdict().reason());
        return mark(m).with("typed", m.typed()).with("value", quantity(m.value())).with("remark", m.remark())
                .with("expectation", expectation(m.expectation())).with("verdict", verdict);
    }

    static ReadingMark reading(Body b) {
        Verdict verdict = !b.has("verdict") ? null : new Verdict(
                Outcome.valueOf(b.body("verdict").text("outcome")), b.body("verdict").text("reason"));
        Expectation expectation = b.has("expectation") ? expectation(b.body("expectation")) : null;
        return new ReadingMark(b.text("id"), b.place("place"), b.whole("page"), b.point("at"), b.text("typed"),
                quantity(b.body("value")), b.text("remark"), expectation, verdict, b.instant("when"),
                b.offset("card"));
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
