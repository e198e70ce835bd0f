// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.workbench.correction.Correcting;
import org.probeleaf.workbench.session.SessionListener;
import org.probeleaf.workbench.session.SheetSession;

/**
 * Where the pages stand on the screen, written to a file for tests that drive the window with a real mouse. Does
 * nothing unless the system property {@code probeleaf.window.report} names a file.
 */
final class ViewportReport {

    private final SheetCanvas canvas;
    private final SheetSession session;
    private final Correcting correcting;
    private final Path file;
    /** Whether a menu stands open, of the sheet or of a list. */
    private boolean menu;

    ViewportReport(SheetCanvas canvas, SheetSession session, Correcting correcting) {
        this.correcting = correcting;
        this.canvas = canvas;
        this.session = session;
        String name = System.getProperty("probeleaf.window.report");
        this.file = name == null ? null : Path.of(name);
        if (file != null) {
            canvas.addPaintListener(e -> write());
            correcting.addListener(this::later);
            canvas.getDisplay().addFilter(SWT.FocusIn, e -> later());
            canvas.getDisplay().addFilter(SWT.Paint, e -> {
                if (e.widget instanceof Control c && c.getShell() != canvas.getShell()) {
                    later();
                }
            });
            canvas.getDisplay().addFilter(SWT.MouseUp, e -> later());
            canvas.getDisplay().addFilter(SWT.KeyUp, e -> later());
            canvas.getDisplay().addFilter(SWT.Show, e -> menu(e, true));
            canvas.getDisplay().addFilter(SWT.Hide, e -> menu(e, false));
            session.addListener(new SessionListener() {
                @Override
                public void factsChanged() {
                    later();
                }

                @Override
                public void selectionChanged() {
                    later();
                }

                @Override
                public void capturesChanged() {
                    later();
                }

                @Override
                public void suspectsChanged() {
                    later();
                }

                @Override
                public void routeChanged() {
                    later();
                }

                @Override
                public void statusChanged() {
                    later();
                }
            });
        }
    }

    private void menu(Event event, boolean shown) {
        if (event.widget instanceof Menu) {
            menu = shown;
            later();
        }
    }

    /** When all that follows from an event is done. */
    private void later() {
        canvas.getDisplay().asyncExec(() -> {
            if (!canvas.isDisposed()) {
                write();
            }
        });
    }

    private static boolean types(Control focus) {
        return focus instanceof Text || focus instanceof Combo combo && (combo.getStyle() & SWT.READ_ONLY) == 0;
    }

    private void write() {
        Point corner = canvas.toDisplay(0, 0);
        ScreenWords words = new ScreenWords(canvas.getShell());
        String pages = canvas.frames().stream().map(f -> String.format(Locale.ROOT,
                "{\"page\":%d,\"x\":%d,\"y\":%d,\"zoom\":%.6f,\"width\":%.2f,\"height\":%.2f}", f.page(),
                corner.x + f.x(), corner.y + f.y(), f.zoom(), f.width(), f.height()))
                .collect(Collectors.joining(","));
        String json = String.format(Locale.ROOT,
                "{\"drawn\":%b,\"recognised\":%b,\"recognising\":%b,\"selected\":\"%s\",\"revision\":%d,\"focus\":%b,\"typing\":%b,\"trouble\":\"%s\","
                + "\"route\":%d,\"step\":%d,\"suspects\":\"%s\",\"next\":\"%s\",\"correcting\":\"%s\",\"misses\":%b,\"trial\":\"%s\",\"menu\":%b,"
                + "\"rows\":%s,\"places\":%s,\"canvas\":[%d,%d,%d,%d],\"pages\":[%s]}%n",
                session.drawn(), session.facts().map(f -> f.recognised()).orElse(false), session.recognising(),
                session.selectedNet().map(n -> n.id()).orElse(""),
                session.facts().map(f -> f.state().revision()).orElse(-1L), canvas.isFocusControl(),
                types(canvas.getDisplay().getFocusControl()),
                session.trouble().map(t -> t.text().replace("\\", "\\\\").replace("\"", "\\\"")).orElse(""),
                session.routes().route().map(r -> r.nodes().size()).orElse(0), session.routes().at(),
                session.suspects().finding().map(f -> f.suspects().stream().map(s -> s.ref())
                        .collect(Collectors.joining(" "))).orElse(""),
                session.suspects().finding().map(f -> f.next()).map(n -> n.at().text()).orElse(""),
                correcting.task().map(t -> t.name() + " " + correcting.picks().size()).orElse(""),
                correcting.misses(), correcting.trial().map(t -> t.works() ? "DONE" : "NOT").orElse(""), menu,
                words.rows(), words.places(), corner.x, corner.y, canvas.getSize().x, canvas.getSize().y, pages);
        try {
            Path next = file.resolveSibling(file.getFileName() + ".next");
            Files.writeString(next, json);
            Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new IllegalStateException("the report cannot be written to " + file, e);
        }
    }
}
