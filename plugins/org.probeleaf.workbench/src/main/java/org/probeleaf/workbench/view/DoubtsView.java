// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.List;

import org.eclipse.swt.widgets.Composite;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.session.Facts;

/** Where the reading of the sheets is unsure; a double click or Enter goes to the place. */
public final class DoubtsView extends SessionView {

    private PlainTable<Doubt> table;

    @Override
    void createContent(Composite parent) {
        Look look = new Look(parent);
        Head.column(parent);
        table = new PlainTable<>(parent, Doubt.class, this::go);
        table.column("Doubt", 80, 160, Doubt::text, d -> look.icon("doubts"));
        table.column("Sheet", 12, 52, d -> String.valueOf(d.page()), null);
        table.hint("Places where the reading of the sheets is unsure stand here.");
    }

    @Override
    void refresh() {
        table.show(facts().filter(Facts::recognised).map(f -> f.netlist().doubts()).orElse(List.of()));
    }

    private void go(Doubt doubt) {
        session().ifPresent(s -> {
            if (doubt.at() == null) {
                s.showPage(doubt.page());
            } else {
                s.select(facts().map(f -> f.at(doubt.page(), doubt.at(), 3)).orElse(null));
                s.reveal(doubt.page(), Box.of(doubt.at()).grow(40));
            }
        });
    }

    @Override
    public void setFocus() {
        table.focus();
    }
}
