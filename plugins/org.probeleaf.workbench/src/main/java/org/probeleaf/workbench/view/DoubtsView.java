// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.job.SheetReading;
import org.probeleaf.job.change.RemoveCorrection;
import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.workbench.correction.Remedies;
import org.probeleaf.workbench.correction.Task;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.sheet.SheetEditor;

/**
 * Where the reading of the sheets is unsure. Selecting a doubt goes to the place and offers what may answer it; a double
 * click or Enter goes to the place and gives it the keyboard.
 */
public final class DoubtsView extends SessionView {

    private PlainTable<Doubt> table;
    private Foot foot;

    @Override
    protected void createContent(Composite parent) {
        Look look = new Look(parent);
        Head.column(parent);
        table = new PlainTable<>(parent, Doubt.class, d -> {
            go(d);
            editor(SheetEditor::setFocus);
        });
        table.column("Doubt", 80, 160, Doubt::text, d -> look.icon("doubts"));
        table.column("Near", 24, 76, this::near, null);
        table.column("Sheet", 12, 52, d -> String.valueOf(d.page()), null);
        table.hint("Places where the reading of the sheets is unsure stand here.");
        foot = new Foot(parent);
        table.viewer().addSelectionChangedListener(e -> {
            Doubt doubt = e.getSelection() instanceof IStructuredSelection s && s.getFirstElement() instanceof Doubt d
                    ? d : null;
            offer(doubt);
            if (doubt != null) {
                go(doubt);
            }
        });
    }

    @Override
    protected void refresh() {
        table.show(facts().filter(Facts::recognised).map(f -> f.netlist().doubts()).orElse(List.of()));
    }

    private void go(Doubt doubt) {
        session().ifPresent(s -> {
            if (doubt.at() == null) {
                s.showPage(doubt.page());
            } else {
                s.select(place(doubt));
                s.reveal(doubt.page(), Box.of(doubt.at()).grow(40));
            }
        });
    }

    /** The pin, part or net at a doubt, to tell one doubt from another like it; empty where there is none. */
    private String near(Doubt doubt) {
        Selection there = doubt.at() == null ? null : place(doubt);
        if (there == null) {
            return "";
        }
        if (there.part() != null) {
            return there.part().ref() + (there.pin() == null ? "" : "." + there.pin().label());
        }
        return there.net() == null ? "" : there.net().name() == null ? there.net().id() : there.net().name();
    }

    private Selection place(Doubt doubt) {
        return facts().map(f -> f.at(doubt.page(), doubt.at(), 3)).orElse(null);
    }

    /** Says the doubt in full and puts buttons below the list: the corrections that may answer it. */
    private void offer(Doubt doubt) {
        foot.show(doubt == null ? "" : doubt.text());
        KeptCorrection cause = doubt == null ? null : cause(doubt);
        if (cause != null) {
            foot.button("Take the correction back", "remove", () -> session().ifPresent(s ->
                    s.apply(new RemoveCorrection(cause.id(), Instant.now()))));
        } else if (doubt != null && session().filter(s -> !s.readOnly()).isPresent()) {
            for (Remedies.Remedy r : Remedies.of(doubt)) {
                foot.button(r.task().title(), r.task().icon(), () -> start(r.task(), r.there() ? place(doubt) : null));
            }
        }
    }

    /** The correction that the doubt is about, or null. */
    private KeptCorrection cause(Doubt doubt) {
        SheetReading reading = facts().map(f -> f.state().sheetReading()).orElse(null);
        for (int i = 0; reading != null && i < reading.corrections().size(); i++) {
            KeptCorrection kept = reading.corrections().get(i);
            if (Remedies.isAbout(doubt, kept.correction(), reading.outcome(i))) {
                return kept;
            }
        }
        return null;
    }

    private void start(Task task, Selection place) {
        editor(e -> e.correcting().start(task, place));
    }

    private void editor(Consumer<SheetEditor> what) {
        if (getSite().getPage().getActiveEditor() instanceof SheetEditor editor) {
            what.accept(editor);
        }
    }

    @Override
    public void setFocus() {
        table.focus();
    }
}
