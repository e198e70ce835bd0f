// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;
import org.probeleaf.workbench.session.ActiveSession;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.SessionListener;
import org.probeleaf.workbench.session.SheetSession;

/** A view that follows the job in front. Called on the display thread. */
public abstract class SessionView extends ViewPart implements SessionListener {

    private final Runnable follower = this::follow;
    private SheetSession session;

    @Override
    public final void createPartControl(Composite parent) {
        createContent(parent);
        ActiveSession active = ActiveSession.of(getSite().getWorkbenchWindow());
        active.addListener(follower);
        parent.addListener(SWT.Dispose, e -> {
            active.removeListener(follower);
            if (session != null) {
                session.removeListener(this);
            }
        });
        follow();
    }

    private void follow() {
        if (session != null) {
            session.removeListener(this);
        }
        session = ActiveSession.of(getSite().getWorkbenchWindow()).get().orElse(null);
        if (session != null) {
            session.addListener(this);
        }
        refresh();
    }

    /** Makes the widgets. */
    protected abstract void createContent(Composite parent);

    /** Shows what is so now; there may be no job. */
    protected abstract void refresh();

    /** The job in front. */
    protected final Optional<SheetSession> session() {
        return Optional.ofNullable(session);
    }

    /** What is known of it. */
    protected final Optional<Facts> facts() {
        return session().flatMap(SheetSession::facts);
    }

    @Override
    public void factsChanged() {
        refresh();
    }
}
