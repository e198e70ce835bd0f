// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.ui.IWorkbenchWindow;

/** The job whose sheet is in front in a window; views follow it. Used on the display thread only. */
public final class ActiveSession {

    private static final Map<IWorkbenchWindow, ActiveSession> WINDOWS = new WeakHashMap<>();

    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private SheetSession session;

    private ActiveSession() {
    }

    /** The one of a window. */
    public static ActiveSession of(IWorkbenchWindow window) {
        return WINDOWS.computeIfAbsent(window, w -> new ActiveSession());
    }

    public Optional<SheetSession> get() {
        return Optional.ofNullable(session);
    }

    /** A sheet has come to the front. */
    public void activate(SheetSession other) {
        if (session != other) {
            session = other;
            listeners.forEach(Runnable::run);
        }
    }

    /** A sheet was closed. */
    public void deactivate(SheetSession closed) {
        if (session == closed) {
            session = null;
            listeners.forEach(Runnable::run);
        }
    }

    /** Tells {@code listener} when another job comes to the front. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }
}
