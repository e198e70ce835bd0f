// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.Selection;

/** The parts of the drawing; a double click or Enter goes to one. */
public final class PartsView extends SessionView {

    private Text filter;
    private PlainTable<Part> table;

    @Override
    protected void createContent(Composite parent) {
        Head.column(parent);
        filter = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage("Designator or value");
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.horizontalIndent = 6;
        wide.verticalIndent = 6;
        filter.setLayoutData(wide);
        filter.addListener(SWT.Modify, e -> refresh());
        table = new PlainTable<>(parent, Part.class, this::go);
        table.column("Part", 24, 60, Part::ref, null);
        table.column("Value", 40, 80, Part::value, null);
        table.column("Pins", 14, 48, p -> String.valueOf(p.pins().size()), null);
        table.column("Sheet", 18, 52, p -> p.units().stream().map(u -> String.valueOf(u.page())).distinct()
                .collect(Collectors.joining(", ")), null);
    }

    @Override
    protected void refresh() {
        Facts facts = facts().filter(Facts::recognised).orElse(null);
        if (facts == null || filter.isDisposed()) {
            table.show(List.of());
            return;
        }
        String wanted = filter.getText().strip().toLowerCase(Locale.ROOT);
        List<Part> parts = new ArrayList<>(facts.netlist().parts().stream()
                .filter(p -> wanted.isEmpty() || p.ref().toLowerCase(Locale.ROOT).contains(wanted)
                        || p.value() != null && p.value().toLowerCase(Locale.ROOT).contains(wanted)).toList());
        parts.sort((a, b) -> NaturalOrder.INSTANCE.compare(a.ref(), b.ref()));
        table.show(parts);
    }

    private void go(Part part) {
        PartUnit unit = part.units().get(0);
        session().ifPresent(s -> {
            s.select(new Selection(unit.page(), unit.box().centre(),
                    new org.probeleaf.schematic.place.Place.OfPart(part.ref()), null, part, null));
            s.reveal(unit.page(), unit.box());
        });
    }

    @Override
    public void setFocus() {
        filter.setFocus();
    }
}
