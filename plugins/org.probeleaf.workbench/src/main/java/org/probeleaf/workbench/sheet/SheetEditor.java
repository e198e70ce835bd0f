// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.contexts.IContextActivation;
import org.eclipse.ui.contexts.IContextService;
import org.probeleaf.job.round.Offer;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.workbench.correction.Correcting;
import org.probeleaf.workbench.correction.CorrectingStrip;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.look.SavedEditor;
import org.probeleaf.workbench.session.ActiveSession;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SessionListener;
import org.probeleaf.workbench.session.SheetSession;

/** The editor of a job: its sheets, with bars above and below. There is nothing to save: each change is on disk. */
public final class SheetEditor extends SavedEditor {

    /** Its id in plugin.xml. */
    public static final String ID = "org.probeleaf.workbench.sheet";
    /** Active while the sheet has the focus, so that one-letter keys mean something. */
    private static final String CONTEXT = "org.probeleaf.workbench.sheet.focus";

    private SheetSession session;
    private SheetCanvas canvas;
    private FindBar find;
    private Correcting correcting;
    private InPlaceEntry entry;
    private KeysOverlay keys;
    private IContextActivation context;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        if (!(input instanceof SheetInput sheet)) {
            throw new PartInitException("Only sheets and jobs can be opened here");
        }
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        session = new SheetSession(sheet.file(), site.getShell().getDisplay());
    }

    @Override
    public void createPartControl(Composite parent) {
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        parent.setLayout(layout);
        new NoticeStrip(parent, session);
        correcting = new Correcting(session, parent.getDisplay());
        canvas = new SheetCanvas(parent, session, correcting);
        canvas.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        new CorrectingStrip(canvas, correcting);
        find = new FindBar(parent, session, canvas);
        new Footer(parent, session, canvas);
        SheetMouse mouse = new SheetMouse(canvas, session, correcting);
        new SheetMenu(canvas, session, correcting, mouse);
        keys = new KeysOverlay(canvas, getSite());
        canvas.addListener(SWT.FocusIn, e -> focused(true));
        canvas.addListener(SWT.FocusOut, e -> focused(false));
        session.addListener(new SessionListener() {
            @Override
            public void factsChanged() {
                mouse.settled();
                session.file().ifPresent(f -> setPartName(new SheetInput(f).getName()));
                firePropertyChange(PROP_TITLE);
            }
        });
        new ViewportReport(canvas, session, correcting);
        session.open(null);
        ActiveSession.of(getSite().getWorkbenchWindow()).activate(session);
    }

    private void focused(boolean on) {
        IContextService contexts = getSite().getWorkbenchWindow().getService(IContextService.class);
        if (contexts == null) {
            return;
        }
        if (on && context == null) {
            context = contexts.activateContext(CONTEXT);
        } else if (!on && context != null) {
            contexts.deactivateContext(context);
            context = null;
        }
    }

    @Override
    public void setFocus() {
        ActiveSession.of(getSite().getWorkbenchWindow()).activate(session);
        if (entry != null && entry.isOpen()) {
            entry.focus();
        } else {
            canvas.setFocus();
        }
    }

    public SheetSession session() {
        return session;
    }

    public SheetCanvas canvas() {
        return canvas;
    }

    /** What corrects the reading of these sheets. */
    public Correcting correcting() {
        return correcting;
    }

    /** Opens the bar that finds text. */
    public void find() {
        find.open();
    }

    /** Shows or hides the list of keys. */
    public void toggleKeys() {
        keys.toggle();
    }

    /** Opens an entry at the selected place; where nothing is selected, the footer asks for it. */
    public void enter(EntryKind kind) {
        Optional<Selection> selection = session.selection();
        if (selection.isEmpty() || session.readOnly() || session.facts().isEmpty()) {
            return;
        }
        Selection at = selection.get();
        canvas.showBox(at.page(), org.probeleaf.schematic.geometry.Box.of(at.at()));
        PageFrame frame = canvas.frame(at.page()).orElseThrow();
        Point spot = frame.toScreen(at.at());
        if (entry != null) {
            entry.close();
        }
        entry = new InPlaceEntry(canvas, kind, () -> session.selection().orElse(at),
                new org.eclipse.swt.graphics.Point((int) spot.x(), (int) spot.y()), session::apply);
        // What is still on its way, a click on the sheet just before, may give the keys to the sheet once more.
        canvas.getDisplay().asyncExec(entry::focus);
        session.facts().ifPresent(f -> entry.readings(f.state().readings()));
        if (kind == EntryKind.READING) {
            session.facts().flatMap(f -> Offer.family(f.state(), f.book(), at.place())).ifPresent(entry::offer);
        }
    }

    /** Closes what is open on the sheet, else lets the selection go. */
    public void escape() {
        if (keys.isOpen()) {
            keys.toggle();
        } else if (entry != null && entry.isOpen()) {
            entry.close();
        } else if (correcting.active()) {
            correcting.cancel();
        } else {
            session.select(null);
        }
    }

    @Override
    public void dispose() {
        focused(false);
        if (session != null) {
            ActiveSession.of(getSite().getWorkbenchWindow()).deactivate(session);
            session.close();
        }
        super.dispose();
    }
}
