// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.app;

import java.nio.file.Path;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.workbench.UIEvents;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.commands.ICommandService;
import org.probeleaf.workbench.session.ActiveSession;
import org.probeleaf.workbench.session.SessionListener;
import org.probeleaf.workbench.session.SheetSession;

/** Keeps the window's title: the job in front and that all of it is on disk. Refreshes the names of undo and redo. */
final class WindowTitle implements SessionListener {

    private final IWorkbenchWindowConfigurer configurer;
    private final ActiveSession active;
    private SheetSession session;

    WindowTitle(IWorkbenchWindowConfigurer configurer) {
        this.configurer = configurer;
        this.active = ActiveSession.of(configurer.getWindow());
        active.addListener(this::follow);
        follow();
    }

    private void follow() {
        if (session != null) {
            session.removeListener(this);
        }
        session = active.get().orElse(null);
        if (session != null) {
            session.addListener(this);
        }
        show();
    }

    @Override
    public void factsChanged() {
        show();
    }

    @Override
    public void selectionChanged() {
        show();
    }

    @Override
    public void statusChanged() {
        show();
    }

    private void show() {
        configurer.setTitle(session == null ? "Probeleaf" : title() + " \u2013 Probeleaf");
        IWorkbenchWindow window = configurer.getWindow();
        ICommandService commands = window.getService(ICommandService.class);
        IEventBroker events = window.getService(IEventBroker.class);
        if (events != null) {
            // Tool items look again whether they can be used.
            events.post(UIEvents.REQUEST_ENABLEMENT_UPDATE_TOPIC, UIEvents.ALL_ELEMENT_ID);
        }
        if (commands != null) {
            commands.refreshElements("org.eclipse.ui.edit.undo", null);
            commands.refreshElements("org.eclipse.ui.edit.redo", null);
        }
    }

    private String title() {
        Path file = session.file().orElse(session.asked());
        String name = file.getFileName().toString();
        if (session.file().isEmpty()) {
            return name;
        }
        if (session.readOnly()) {
            return name + " (to look at only)";
        }
        return name + (session.saving() ? " \u2013 saving\u2026" : " \u2013 all saved on disk");
    }
}
