// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

import org.probeleaf.diagnosis.Finding;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.job.JobState;
import org.probeleaf.job.observation.JobDiagnosis;
import org.probeleaf.schematic.partbook.PartBook;

/**
 * Keeps the suspects of a job up to date with its readings and its board. They are found on a thread of their own, so
 * that nothing waits for them; of several changes in a row only the last is looked at. Called on the display thread.
 */
public final class SuspectFinder {

    private final ExecutorService thread = Executors.newSingleThreadExecutor(r -> {
        Thread t = new Thread(r, "suspects");
        t.setDaemon(true);
        return t;
    });
    private final Consumer<Runnable> post;
    private final Runnable tell;
    private Facts known;
    private Priors priors;
    private Finding finding;
    private volatile int asked;

    /**
     * @param post runs something on the display thread
     * @param tell called when there is another finding
     */
    SuspectFinder(Consumer<Runnable> post, Runnable tell) {
        this.post = post;
        this.tell = tell;
    }

    /** What follows from the readings; empty before recognition, and until it was found for the first time. */
    public Optional<Finding> finding() {
        return Optional.ofNullable(finding);
    }

    /** Whether what is shown is still that of before the last change. */
    public boolean underWay() {
        return underWay;
    }

    private boolean underWay;

    /** There may be other facts. */
    void look(Facts now) {
        Priors weights = OwnPriors.shared().priors();
        if (now == null || !now.recognised() || same(now) && weights == priors) {
            return;
        }
        known = now;
        priors = weights;
        int mine = ++asked;
        underWay = true;
        JobState state = now.state();
        PartBook book = now.book();
        thread.execute(() -> {
            if (mine == asked) {
                Finding found = JobDiagnosis.finding(state, book, weights).orElse(null);
                post.accept(() -> show(mine, found));
            }
        });
    }

    private boolean same(Facts now) {
        return known != null && known.book() == now.book() && known.state().boards() == now.state().boards()
                && known.state().readings().equals(now.state().readings());
    }

    private void show(int mine, Finding found) {
        if (mine == asked) {
            underWay = false;
            finding = found;
            tell.run();
        }
    }

    void close() {
        asked++;
        thread.shutdown();
    }
}
