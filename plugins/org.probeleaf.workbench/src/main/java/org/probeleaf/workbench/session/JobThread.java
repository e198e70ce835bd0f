// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;

/** The one thread on which a session touches its job and its files, in the order asked. It owns the job. */
final class JobThread implements Executor {

    private final ExecutorService worker = Executors.newSingleThreadExecutor(r -> {
        Thread t = new Thread(r, "job file");
        t.setDaemon(true);
        return t;
    });
    private final AtomicInteger underway = new AtomicInteger();
    private final Runnable changed;
    private final Consumer<Trouble> trouble;
    private volatile Job job;

    /** Something done to the job on its thread. */
    @FunctionalInterface
    interface JobAction {
        void on(Job job) throws JobException;
    }

    /**
     * @param changed called, on any thread, when something is under way or no longer
     * @param trouble told, on this thread, what could not be done
     */
    JobThread(Runnable changed, Consumer<Trouble> trouble) {
        this.changed = changed;
        this.trouble = trouble;
    }

    @Override
    public void execute(Runnable what) {
        worker.execute(what);
    }

    /** On this thread: takes a job over in place of the one before. */
    void take(Job next) {
        if (job != null) {
            job.close();
        }
        job = next;
    }

    /** The job, or null before it is open. */
    Job job() {
        return job;
    }

    /** Does something to the job when its turn comes; nothing before there is a job. */
    void onJob(JobAction action) {
        underway.incrementAndGet();
        changed.run();
        execute(() -> {
            try {
                if (job != null) {
                    action.on(job);
                }
            } catch (JobException | IllegalArgumentException | IllegalStateException e) {
                trouble.accept(new Trouble(Trouble.Kind.NOTICE, e.getMessage()));
            } finally {
                underway.decrementAndGet();
                changed.run();
            }
        });
    }

    /** Whether something done to the job is not safe on disk yet. */
    boolean busy() {
        return underway.get() > 0;
    }

    /** Lets the job go after all that was asked, and ends. */
    void end(Runnable last) {
        execute(() -> {
            last.run();
            take(null);
        });
        worker.shutdown();
    }
}
