// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.io.IOException;
import java.io.StringReader;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/** The lines of one part of the book, read while they are typed: what is wrong with them stands below at once. */
final class PartLinesEditor {

    private final Host host;
    private final Look look;
    private final Text text;
    private final Label words;
    private final Button keep;
    private final Button drop;
    private String before = "";
    /** Name of the part of the technician's own that is shown, or null. */
    private String own;

    /** Who keeps and forgets. */
    interface Host {
        void keep(String lines);

        void drop(String name);
    }

    PartLinesEditor(Composite parent, Host host) {
        this.host = host;
        Composite all = new Composite(parent, SWT.NONE);
        look = new Look(all);
        Head.column(all);
        text = new Text(all, SWT.MULTI | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        text.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        text.setFont(JFaceResources.getTextFont());
        text.setMessage("Select a type, or write one");
        text.addListener(SWT.Modify, e -> check());
        words = new Label(all, SWT.WRAP);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = 180;
        wide.horizontalIndent = 8;
        wide.verticalIndent = 4;
        words.setLayoutData(wide);
        Composite buttons = new Composite(all, SWT.NONE);
        buttons.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.marginLeft = 8;
        row.spacing = 8;
        buttons.setLayout(row);
        keep = button(buttons, "Keep as mine", () -> host.keep(text.getText()));
        drop = button(buttons, "Drop mine", () -> host.drop(own));
        button(buttons, "New", () -> edit(blank("NAME", 14, "What it is", "*NAME*"), null));
        check();
    }

    private static Button button(Composite parent, String title, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(title);
        button.addListener(SWT.Selection, e -> action.run());
        return button;
    }

    /**
     * Shows a part's lines.
     *
     * @param ownName its name where the technician wrote it, else null
     */
    void edit(String lines, String ownName) {
        own = ownName;
        before = lines;
        text.setText(lines);
        check();
    }

    /** Offers to write a part that the book does not know, with the pins that the sheet draws. */
    void offer(Part part) {
        StringBuilder lines = new StringBuilder("part " + part.value().replaceAll("\\s+", "-") + " " + part.pins().size()
                + " What it is\n  spelt " + part.value().toUpperCase(java.util.Locale.ROOT).replaceAll("\\s+", "") + "*\n");
        part.pins().stream().filter(p -> p.number() != null).forEach(p -> lines.append("  ").append(p.number())
                .append(" in ").append(p.name() == null ? "NAME" : p.name().replaceAll("\\s+", "-")).append('\n'));
        edit(lines.toString(), null);
        say("The book does not know " + part.value() + ". Say of each pin what it is (in, out, tri, oc, io, power,"
                + " ground, timing), and keep it.", false);
    }

    private static String blank(String name, int pins, String title, String spelt) {
        StringBuilder lines = new StringBuilder("part " + name + " " + pins + " " + title + "\n  spelt " + spelt + "\n");
        for (int i = 1; i <= pins; i++) {
            lines.append("  ").append(i).append(i == pins ? " power VCC" : i == pins / 2 ? " ground GND" : " in P" + i)
                    .append('\n');
        }
        return lines.append("  unit A AND 1,2 > 3\n").toString();
    }

    /** Whether something was typed that is not kept. */
    boolean hasDraft() {
        return !text.getText().equals(before);
    }

    void say(String sentence, boolean wrong) {
        words.setText(sentence.replace("&", "&&"));
        words.setForeground(look.colour(wrong ? Palette.VERMILLION : Palette.QUIET));
        words.getParent().layout(true, true);
    }

    private void check() {
        drop.setEnabled(own != null);
        if (text.getText().isBlank()) {
            keep.setEnabled(false);
            say("What you keep goes into your own book and counts before the standard one.", false);
            return;
        }
        try {
            int types = PartBook.read(new StringReader(text.getText())).types().size();
            keep.setEnabled(types == 1 && (own == null || hasDraft()));
            say(types != 1 ? "These lines are " + types + " parts; keep one at a time." : hasDraft()
                    ? "Reads well. Keep it, and it counts at once." : own != null ? "Written by you; it counts before the"
                    + " standard book." : "From the standard book. Change it and keep it to have it your way.", types != 1);
        } catch (IOException e) {
            keep.setEnabled(false);
            say(e.getMessage().replaceFirst("^part book, ", ""), true);
        }
    }

    void focus() {
        text.setFocus();
    }
}
