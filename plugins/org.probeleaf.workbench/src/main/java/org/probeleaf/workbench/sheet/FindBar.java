// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.session.Sheets;

/** The bar that finds text on all sheets, page by page in the background from the current page on. */
final class FindBar {

    private final SheetSession session;
    private final SheetCanvas canvas;
    private final Composite bar;
    private final Text text;
    private final Label count;
    private final Look look;
    private final Map<Integer, List<org.probeleaf.drawing.primitive.Text>> known = new HashMap<>();
    private Sheets knownOf;
    private List<FindHit> hits = List.of();
    private int current = -1;
    private Job search;

    FindBar(Composite parent, SheetSession session, SheetCanvas canvas) {
        this.session = session;
        this.canvas = canvas;
        bar = new Composite(parent, SWT.NONE);
        look = new Look(bar);
        bar.setBackground(look.colour(Palette.BAR));
        bar.setBackgroundMode(SWT.INHERIT_FORCE);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.exclude = true;
        bar.setLayoutData(data);
        bar.setVisible(false);
        GridLayout layout = new GridLayout(4, false);
        layout.marginWidth = 12;
        layout.marginHeight = 4;
        bar.setLayout(layout);
        Label icon = new Label(bar, SWT.NONE);
        icon.setImage(look.icon("find"));
        text = new Text(bar, SWT.BORDER | SWT.SINGLE);
        text.setMessage("Find text on all sheets");
        text.setLayoutData(new GridData(260, SWT.DEFAULT));
        text.addListener(SWT.Modify, e -> start());
        text.addListener(SWT.DefaultSelection, e -> go((e.stateMask & SWT.SHIFT) != 0 ? -1 : 1));
        text.addListener(SWT.KeyDown, this::key);
        text.addListener(SWT.Traverse, this::traverse);
        ToolBar tools = new ToolBar(bar, SWT.FLAT);
        tool(tools, "previous", "Previous (Shift+F3)", () -> go(-1));
        tool(tools, "next", "Next (Enter or F3)", () -> go(1));
        tool(tools, "close", "Close (Esc)", this::close);
        count = new Label(bar, SWT.NONE);
        count.setForeground(look.colour(Palette.QUIET));
        count.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    }

    private void tool(ToolBar tools, String icon, String tip, Runnable action) {
        ToolItem item = new ToolItem(tools, SWT.PUSH);
        item.setImage(look.icon(icon));
        item.setToolTipText(tip);
        item.addListener(SWT.Selection, e -> action.run());
    }

    private void key(Event e) {
        if (e.keyCode == SWT.F3) {
            go((e.stateMask & SWT.SHIFT) != 0 ? -1 : 1);
        }
    }

    private void traverse(Event e) {
        if (e.detail == SWT.TRAVERSE_ESCAPE) {
            e.doit = false;
            close();
        }
    }

    /** Opens the bar with its text selected. */
    void open() {
        show(true);
        text.setFocus();
        text.selectAll();
        start();
    }

    private void close() {
        show(false);
        stop();
        hits = List.of();
        canvas.showHits(hits, -1);
        canvas.forceFocus();
    }

    private void show(boolean on) {
        ((GridData) bar.getLayoutData()).exclude = !on;
        bar.setVisible(on);
        bar.getParent().layout(true, true);
    }

    private void stop() {
        if (search != null) {
            search.cancel();
            search = null;
        }
    }

    private void start() {
        stop();
        hits = List.of();
        current = -1;
        canvas.showHits(hits, -1);
        String wanted = text.getText();
        count.setText("");
        if (wanted.isBlank() || canvas.pageCount() == 0) {
            return;
        }
        Sheets sheets = session.sheets();
        if (knownOf != sheets) {
            known.clear();
            knownOf = sheets;
        }
        search = new Search(wanted, sheets, Math.max(1, canvas.currentPage()));
        search.schedule();
    }

    /** Looks through the pages from one on, round to the one before it. */
    private final class Search extends Job {
        private final String wanted;
        private final Sheets sheets;
        private final int first;

        Search(String wanted, Sheets sheets, int first) {
            super("Find " + wanted);
            this.wanted = wanted;
            this.sheets = sheets;
            this.first = first;
            setSystem(true);
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            int pages = sheets.sizes().size();
            for (int i = 0; i < pages && !monitor.isCanceled(); i++) {
                int page = (first - 1 + i) % pages + 1;
                List<FindHit> found = FindHit.in(page, texts(page), wanted);
                boolean last = i == pages - 1;
                if (!found.isEmpty() || last) {
                    add(found, last);
                }
            }
            return Status.OK_STATUS;
        }

        private List<org.probeleaf.drawing.primitive.Text> texts(int page) {
            synchronized (known) {
                if (known.containsKey(page)) {
                    return known.get(page);
                }
            }
            List<org.probeleaf.drawing.primitive.Text> texts;
            try {
                texts = sheets.texts(page).stream().filter(org.probeleaf.drawing.primitive.Text::visible).toList();
            } catch (SheetException e) {
                texts = List.of(); // the page itself says that it is damaged
            }
            synchronized (known) {
                known.put(page, texts);
            }
            return texts;
        }

        private void add(List<FindHit> found, boolean last) {
            canvas.getDisplay().asyncExec(() -> {
                if (search == this && !bar.isDisposed()) {
                    List<FindHit> all = new ArrayList<>(hits);
                    all.addAll(found);
                    hits = all;
                    if (current < 0 && !hits.isEmpty()) {
                        current = 0;
                    }
                    canvas.showHits(hits, current);
                    showCount(last);
                }
            });
        }
    }

    private void showCount(boolean complete) {
        String words = hits.isEmpty() ? complete ? "Not found on any sheet" : "Looking\u2026"
                : current + 1 + " of " + hits.size() + (complete ? "" : "\u2026")
                + ", sheet " + hits.get(current).page();
        count.setText(words);
    }

    private void go(int step) {
        if (!hits.isEmpty()) {
            current = Math.floorMod(current + step, hits.size());
            canvas.showHits(hits, current);
            showCount(true);
        }
    }
}
