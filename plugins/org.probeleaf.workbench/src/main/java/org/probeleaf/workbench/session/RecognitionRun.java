// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.function.Consumer;

import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;
import org.probeleaf.recognition.Progress;
import org.probeleaf.schematic.netlist.Netlist;

/** The recognition of an open job's sheets: at most one at a time, and how far it is. Called on the display thread. */
final class RecognitionRun implements Recognition.Client {

    /** What the session does for it. */
    interface Host {
        /** The open job; asked off the display thread. */
        Job job();

        /** Keeps what was recognised. */
        void keep(Netlist netlist);

        /** Runs something on the display thread. */
        void post(Runnable what);

        /** It has come on. */
        void progressed();
    }

    private final Host host;
    private final Consumer<Trouble> trouble;
    private Recognition running;
    private int pagesDone;
    private int pagesTotal;

    /** @param trouble told on the display thread what stands in the way */
    RecognitionRun(Host host, Consumer<Trouble> trouble) {
        this.host = host;
        this.trouble = trouble;
    }

    void start() {
        if (running == null) {
            pagesDone = 0;
            pagesTotal = 0;
            running = new Recognition(this);
            running.schedule();
            host.progressed();
        }
    }

    /** Stops it at the next page. */
    void stop() {
        if (running != null) {
            running.cancel();
        }
    }

    boolean running() {
        return running != null;
    }

    int pagesDone() {
        return pagesDone;
    }

    /** Pages to recognise; 0 where it is not known yet. */
    int pagesTotal() {
        return pagesTotal;
    }

    @Override
    public Netlist recognise(Progress progress) throws JobException {
        return host.job().recognise(OwnPartBook.shared().book(), progress);
    }

    @Override
    public void pagesDone(int done, int total) {
        host.post(() -> {
            pagesDone = done;
            pagesTotal = total;
            host.progressed();
        });
    }

    @Override
    public void finished(Netlist netlist) {
        host.keep(netlist);
        end(null);
    }

    @Override
    public void stopped() {
        end(new Trouble(Trouble.Kind.READ,
                "Reading was stopped: nets cannot be followed until the sheets have been read."));
    }

    @Override
    public void failed(String sentence) {
        end(new Trouble(Trouble.Kind.NOTICE, sentence));
    }

    private void end(Trouble what) {
        host.post(() -> {
            running = null;
            if (what != null) {
                trouble.accept(what);
            }
            host.progressed();
        });
    }
}
