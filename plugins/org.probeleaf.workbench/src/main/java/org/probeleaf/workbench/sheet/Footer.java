// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.board.LoosePin;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SessionListener;
import org.probeleaf.workbench.session.SheetSession;

/** The line under the sheet: what the pointer is on, how far reading has come, which sheet, how large. */
final class Footer {

    /** In logical pixels; the same with and without progress, so that the sheet does not jump. */
    private static final int HEIGHT = 34;

    private final SheetSession session;
    private final SheetCanvas canvas;
    private final Composite bar;
    private final Label words;
    private final Composite progress;
    private final Label progressWords;
    private final ProgressBar progressBar;
    private final Label page;
    private final Label zoom;

    Footer(Composite parent, SheetSession session, SheetCanvas canvas) {
        this.session = session;
        this.canvas = canvas;
        bar = new Composite(parent, SWT.NONE);
        Look look = new Look(bar);
        bar.setBackground(look.colour(Palette.BAR));
        bar.setBackgroundMode(SWT.INHERIT_FORCE);
        GridData line = new GridData(SWT.FILL, SWT.CENTER, true, false);
        line.heightHint = HEIGHT;
        bar.setLayoutData(line);
        bar.setLayout(row(4, 10, 1));
        bar.addPaintListener(e -> {
            e.gc.setForeground(look.colour(Palette.LINE));
            e.gc.drawLine(0, 0, bar.getSize().x, 0);
        });
        words = new Label(bar, SWT.NONE);
        words.setForeground(look.colour(Palette.TEXT));
        words.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, true));
        progress = new Composite(bar, SWT.NONE);
        progress.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
        progress.setLayout(row(3, 0, 0));
        progressWords = new Label(progress, SWT.NONE);
        progressBar = new ProgressBar(progress, SWT.SMOOTH);
        progressBar.setLayoutData(new GridData(120, SWT.DEFAULT));
        ToolBar tools = new ToolBar(progress, SWT.FLAT | SWT.RIGHT);
        ToolItem cancel = new ToolItem(tools, SWT.PUSH);
        cancel.setText("Stop");
        cancel.setImage(look.icon("close"));
        cancel.setToolTipText("Stop reading the sheets; they can be read again from the Job menu");
        cancel.addListener(SWT.Selection, e -> session.stopRecognition());
        page = quiet(look, 110);
        zoom = quiet(look, 54);
        session.addListener(new Listener());
        canvas.addViewListener(this::showView);
        showWords();
        showProgress();
        showView();
    }

    private Label quiet(Look look, int width) {
        Label label = new Label(bar, SWT.RIGHT);
        label.setForeground(look.colour(Palette.QUIET));
        GridData data = new GridData(SWT.END, SWT.CENTER, false, false);
        data.widthHint = width;
        label.setLayoutData(data);
        return label;
    }

    private static GridLayout row(int columns, int marginWidth, int marginHeight) {
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = marginWidth;
        layout.marginHeight = marginHeight;
        layout.horizontalSpacing = 10;
        return layout;
    }

    private final class Listener implements SessionListener {
        @Override
        public void sheetsReady() {
            showView();
        }

        @Override
        public void factsChanged() {
            showWords();
        }

        @Override
        public void selectionChanged() {
            showWords();
        }

        @Override
        public void hoverChanged() {
            showWords();
        }

        @Override
        public void statusChanged() {
            showProgress();
            showWords();
        }
    }

    private void showWords() {
        if (!words.isDisposed()) {
            String none = session.trouble().isPresent() ? "" : "Opening\u2026";
            String text = session.facts().map(this::text).orElse(none).replace("&", "&&");
            if (!text.equals(words.getText())) {
                words.setText(text);
            }
        }
    }

    private String text(Facts facts) {
        Net net = session.hover().or(session::selectedNet).orElse(null);
        if (net != null) {
            return describe(facts, net);
        }
        Selection s = session.selection().orElse(null);
        if (s != null && s.part() != null) {
            String value = s.part().value() == null ? "" : "  " + s.part().value();
            return s.part().ref() + value + (s.pin() == null ? out(facts, s.part().ref())
                    : ", pin " + s.pin().label() + ": " + facts.board().loosePins().stream()
                            .filter(l -> l.pin() == s.pin()).findFirst().map(l -> off(facts, l))
                            .orElse("not connected"));
        }
        if (!facts.recognised()) {
            return session.recognising() ? "The sheet can be used while it is being read." : "";
        }
        if (facts.netlist().nets().isEmpty()) {
            return "No wires were found on these sheets; they can still be looked at, searched and marked.";
        }
        return facts.netlist().parts().size() + " parts, " + facts.netlist().nets().size()
                + " nets. Click a wire or a pin; R pins a reading there, ? shows all keys.";
    }

    private static String out(Facts facts, String ref) {
        return facts.board().removed().stream().anyMatch(p -> p.ref().equals(ref)) ? "   \u00b7   not on the board" : "";
    }

    private static String off(Facts facts, LoosePin loose) {
        return (loose.cut() ? "cut off" : "lifted off") + (loose.pad() == null ? "" : " " + facts.title(loose.pad()));
    }

    /** Name, number of pins, sheets, drivers. */
    private static String describe(Facts facts, Net net) {
        List<TracedPin> pins = facts.pinsOn(net);
        String sheets = net.pages().stream().map(String::valueOf).collect(Collectors.joining(", "));
        String drivers = pins.stream().filter(p -> p.direction() == org.probeleaf.schematic.partbook.PinDirection.OUT)
                .map(p -> p.place().text()).limit(3).collect(Collectors.joining(", "));
        return facts.title(net) + "   \u00b7   " + count(pins.size(), "pin") + "   \u00b7   "
                + (net.pages().size() > 1 ? "sheets " : "sheet ") + sheets
                + (drivers.isEmpty() ? "" : "   \u00b7   driven by " + drivers)
                + (net.confidence() < 0.7 ? "   \u00b7   read with doubt" : "");
    }

    static String count(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    private void showProgress() {
        if (progress.isDisposed()) {
            return;
        }
        boolean on = session.recognising();
        progress.setVisible(on);
        ((GridData) progress.getLayoutData()).exclude = !on;
        if (on) {
            int total = session.pagesTotal();
            progressWords.setText(total == 0 ? "Reading the sheets\u2026"
                    : "Reading sheet " + Math.min(total, session.pagesDone() + 1) + " of " + total);
            progressBar.setMaximum(Math.max(1, total));
            progressBar.setSelection(session.pagesDone());
        }
        bar.layout(true, true);
    }

    private void showView() {
        if (page.isDisposed()) {
            return;
        }
        int pages = canvas.pageCount();
        page.setText(pages == 0 ? "" : "Sheet " + canvas.currentPage() + " of " + pages);
        zoom.setText(pages == 0 ? "" : Math.round(canvas.view().zoom() * 100) + " %");
    }
}
