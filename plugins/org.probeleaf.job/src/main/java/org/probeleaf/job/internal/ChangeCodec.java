// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

import org.probeleaf.job.change.AddCapture;
import org.probeleaf.job.change.AddCorrection;
import org.probeleaf.job.change.AddLabel;
import org.probeleaf.job.change.AddNote;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.change.ChangeBoard;
import org.probeleaf.job.change.EditLabel;
import org.probeleaf.job.change.EditNote;
import org.probeleaf.job.change.EditReading;
import org.probeleaf.job.change.JudgeCaptureBy;
import org.probeleaf.job.change.KeepBoardChange;
import org.probeleaf.job.change.MoveCard;
import org.probeleaf.job.change.OverruleReading;
import org.probeleaf.job.change.PutBack;
import org.probeleaf.job.change.ReadCaptureAs;
import org.probeleaf.job.change.RemoveCapture;
import org.probeleaf.job.change.RemoveCorrection;
import org.probeleaf.job.change.RemoveLabel;
import org.probeleaf.job.change.RemoveNote;
import org.probeleaf.job.change.RemoveReading;
import org.probeleaf.job.change.SetDetails;
import org.probeleaf.job.expectation.Outcome;

import com.fasterxml.jackson.jr.ob.JSON;

/** Changes as the job file keeps them: a kind and a JSON object. A new change is one line in the register here. */
final class ChangeCodec {

    /** One kind of change. */
    private record Kind<C extends Change>(String name, Class<C> type, Function<C, Body> write,
            Function<Body, C> read) {

        Body body(Change change) {
            return write.apply(type.cast(change));
        }
    }

    private static final Map<String, Kind<?>> BY_NAME = new LinkedHashMap<>();
    private static final Map<Class<?>, Kind<?>> BY_TYPE = new LinkedHashMap<>();

    static {
        register(new Kind<>("set-details", SetDetails.class,
                c -> Body.empty().with("details", MarkCodec.details(c.details())).with("when", c.when()),
                b -> new SetDetails(MarkCodec.details(b.body("details")), b.instant("when"))));
        register(new Kind<>("add-label", AddLabel.class, c -> MarkCodec.label(c.label()),
                b -> new AddLabel(MarkCodec.label(b))));
        register(new Kind<>("edit-label", EditLabel.class, c -> edit(c.id(), c).with("text", c.text()),
                b -> new EditLabel(b.text("id"), b.text("text"), b.instant("when"))));
        register(new Kind<>("remove-label", RemoveLabel.class, c -> edit(c.id(), c),
                b -> new RemoveLabel(b.text("id"), b.instant("when"))));
        register(new Kind<>("add-note", AddNote.class, c -> MarkCodec.note(c.note()),
                b -> new AddNote(MarkCodec.note(b))));
        register(new Kind<>("edit-note", EditNote.class, c -> edit(c.id(), c).with("text", c.text()),
                b -> new EditNote(b.text("id"), b.text("text"), b.instant("when"))));
        register(new Kind<>("remove-note", RemoveNote.class, c -> edit(c.id(), c),
                b -> new RemoveNote(b.text("id"), b.instant("when"))));
        register(new Kind<>("add-reading", AddReading.class, c -> MarkCodec.reading(c.reading()),
                b -> new AddReading(MarkCodec.reading(b))));
        register(new Kind<>("remove-reading", RemoveReading.class, c -> edit(c.id(), c),
                b -> new RemoveReading(b.text("id"), b.instant("when"))));
        register(new Kind<>("move-card", MoveCard.class, c -> edit(c.id(), c).with("card", c.card()),
                b -> new MoveCard(b.text("id"), b.offset("card"), b.instant("when"))));
        register(new Kind<>("add-correction", AddCorrection.class, c -> CorrectionCodec.body(c.kept()),
                b -> new AddCorrection(CorrectionCodec.read(b))));
        register(new Kind<>("remove-correction", RemoveCorrection.class, c -> edit(c.id(), c),
                b -> new RemoveCorrection(b.text("id"), b.instant("when"))));
        register(new Kind<>("change-board", ChangeBoard.class, BoardCodec::body, BoardCodec::read));
        register(new Kind<>("put-back", PutBack.class, c -> edit(c.id(), c),
                b -> new PutBack(b.text("id"), b.instant("when"))));
        register(new Kind<>("keep-board-change", KeepBoardChange.class, c -> edit(c.id(), c),
                b -> new KeepBoardChange(b.text("id"), b.instant("when"))));
    }

    static {
        register(new Kind<>("edit-reading", EditReading.class,
                c -> edit(c.id(), c).with("reading", MarkCodec.reading(c.reading())),
                b -> new EditReading(MarkCodec.reading(b.body("reading")), b.instant("when"))));
        register(new Kind<>("overrule-reading", OverruleReading.class,
                c -> edit(c.id(), c).with("outcome", c.outcome() == null ? null : c.outcome().name()).with("why", c.why()),
                b -> new OverruleReading(b.text("id"), b.has("outcome") ? Outcome.valueOf(b.text("outcome")) : null,
                        b.text("why"), b.instant("when"))));
        register(new Kind<>("add-capture", AddCapture.class, c -> MarkCodec.capture(c.capture()),
                b -> new AddCapture(MarkCodec.capture(b))));
        register(new Kind<>("remove-capture", RemoveCapture.class, c -> edit(c.id(), c),
                b -> new RemoveCapture(b.text("id"), b.instant("when"))));
        register(new Kind<>("read-capture-as", ReadCaptureAs.class, c -> edit(c.id(), c).with("readAs", c.readAs()),
                b -> new ReadCaptureAs(b.text("id"), b.text("readAs"), b.instant("when"))));
        register(new Kind<>("judge-capture-by", JudgeCaptureBy.class, c -> edit(c.id(), c).with("by", c.by()),
                b -> new JudgeCaptureBy(b.text("id"), b.text("by"), b.instant("when"))));
    }

    private ChangeCodec() {
    }

    private static void register(Kind<?> kind) {
        BY_NAME.put(kind.name(), kind);
        BY_TYPE.put(kind.type(), kind);
    }

    private static Body edit(String id, Change c) {
        return Body.empty().with("id", id).with("when", c.when());
    }

    static String kind(Change change) {
        return BY_TYPE.get(change.getClass()).name();
    }

    static String body(Change change) {
        return json(BY_TYPE.get(change.getClass()).body(change));
    }

    /**
     * Reads a change.
     *
     * @throws IllegalArgumentException where the kind is not known or the body is not as it should be
     */
    static Change read(String kind, String body) {
        Kind<?> known = BY_NAME.get(kind);
        if (known == null) {
            throw new IllegalArgumentException("\"" + kind + "\" is no kind of change that is known");
        }
        try {
            return known.read().apply(parse(body));
        } catch (RuntimeException e) {
            throw new IllegalArgumentException("the " + kind + " cannot be read: " + e.getMessage(), e);
        }
    }

    static String json(Body body) {
        try {
            return JSON.std.asString(body.fields());
        } catch (IOException e) {
            throw new IllegalStateException("cannot write JSON", e);
        }
    }

    static Body parse(String json) {
        try {
            return Body.of(JSON.std.mapFrom(json));
        } catch (IOException e) {
            throw new IllegalArgumentException("no JSON: " + e.getMessage(), e);
        }
    }
}
