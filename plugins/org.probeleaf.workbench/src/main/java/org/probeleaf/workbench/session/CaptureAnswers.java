// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.waveform.compare.Comparer;
import org.probeleaf.waveform.compare.Comparison;
import org.probeleaf.waveform.compare.Tolerance;
import org.probeleaf.waveform.judge.DigitalJudge;
import org.probeleaf.waveform.judge.Judgement;
import org.probeleaf.waveform.judge.Thresholds;
import org.probeleaf.waveform.report.TraceReport;

/**
 * What is said of captures, worked out when it is first asked for, in the background: a long one takes a while. Called on
 * the display thread.
 */
public final class CaptureAnswers {

    private static final int MOST = 200;

    private record Judged(LoadedTrace trace, Thresholds by) {
    }

    private record Compared(LoadedTrace trace, LoadedTrace reference) {
    }

    private final Executor thread;
    private final Consumer<Runnable> post;
    private final Runnable tell;
    private final Map<CaptureMark, HeldAgainst> held = new HashMap<>();
    private Facts heldBy;
    private final Set<Object> asked = new HashSet<>();
    private final Map<Object, Object> known = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Object> eldest) {
            return size() > MOST;
        }
    };

    CaptureAnswers(Executor thread, Consumer<Runnable> post, Runnable tell) {
        this.thread = thread;
        this.post = post;
        this.tell = tell;
    }

    /**
     * What is said of a trace; empty while it is being worked out.
     *
     * @param by what the next stage needs, or null where nobody said
     */
    public Optional<Judgement> judgement(LoadedTrace trace, Thresholds by) {
        return ask(new Judged(trace, trace.logic() ? null : by), () -> trace.logic() ? DigitalJudge.judge(trace.states())
                : TraceReport.judgement(trace.plot().channel(), trace.measures(), trace.video(), by)).map(Judgement.class::cast);
    }

    /** How a trace lies on one of the same net on a board that works; both have values. Empty while it is being worked out. */
    public Optional<Comparison> comparison(LoadedTrace trace, LoadedTrace reference) {
        return ask(new Compared(trace, reference), () -> Comparer.compare(trace.plot().channel(), trace.measures(),
                reference.plot().channel(), reference.measures(), Tolerance.usual())).map(Comparison.class::cast);
    }

    /** What a capture is judged by, as long as the facts are the same: sheets ask that at every painting. */
    public HeldAgainst heldAgainst(Facts facts, CaptureMark mark) {
        if (facts != heldBy) {
            heldBy = facts;
            held.clear();
        }
        return held.computeIfAbsent(mark, m -> HeldAgainst.of(facts, m));
    }

    private Optional<Object> ask(Object question, Supplier<Object> answer) {
        Object found = known.get(question);
        if (found == null && asked.add(question)) {
            thread.execute(() -> {
                Object made = answer.get();
                post.accept(() -> {
                    asked.remove(question);
                    known.put(question, made);
                    tell.run();
                });
            });
        }
        return Optional.ofNullable(found);
    }
}
