// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.probeleaf.recognition.Progress;
import org.probeleaf.schematic.netlist.Netlist;

/** Recognises the sheets of a job in the background. */
final class Recognition extends Job {

    /** What is to be done with the pages and the result; called on the recognising thread. */
    interface Client {
        Netlist recognise(Progress progress) throws java.io.IOException;

        void pagesDone(int done, int total);

        void finished(Netlist netlist) throws java.io.IOException;

        void stopped();

        void failed(String sentence);
    }

    private final Client client;

    Recognition(Client client) {
        super("Reading the sheets");
        this.client = client;
        setPriority(LONG);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            client.finished(client.recognise(progress(monitor)));
        } catch (CancellationException e) {
            client.stopped();
            return Status.CANCEL_STATUS;
        } catch (java.io.IOException e) {
            client.failed(e.getMessage());
        } catch (RuntimeException e) {
            client.failed("The sheets could not be read (" + e + "); they can still be looked at and marked");
        }
        return Status.OK_STATUS;
    }

    private Progress progress(IProgressMonitor monitor) {
        return new Progress() {
            @Override
            public void pagesDone(int done, int total) {
                client.pagesDone(done, total);
            }

            @Override
            public boolean cancelled() {
                return monitor.isCanceled();
            }
        };
    }
}
