// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;
import org.probeleaf.workbench.look.KeysPanel;
import org.probeleaf.workbench.look.KeysPanel.Row;

/** The list of keys over the sheet, made of the bindings as they are, changed ones included. */
final class KeysOverlay {

    private static final String OURS = "org.probeleaf.workbench.command.";
    private final IWorkbenchPartSite site;
    private final KeysPanel panel;

    KeysOverlay(Canvas parent, IWorkbenchPartSite site) {
        this.site = site;
        this.panel = new KeysPanel(parent, "Keys on the sheet", this::rows);
    }

    boolean isOpen() {
        return panel.isOpen();
    }

    void toggle() {
        panel.toggle();
    }

    private List<Row> rows() {
        IBindingService bindings = site.getService(IBindingService.class);
        List<Row> rows = new ArrayList<>(List.of(new Row("Wheel", "Zoom to the pointer"),
                new Row("Space + drag", "Move the sheet"), new Row("Double click", "Fit a part")));
        List<Command> commands = new ArrayList<>(List.of(site.getService(ICommandService.class).getDefinedCommands()));
        commands.sort((a, b) -> a.getId().compareTo(b.getId()));
        for (Command command : commands) {
            String keys = command.getId().startsWith(OURS) ? bindings.getBestActiveBindingFormattedFor(command.getId())
                    : null;
            if (keys != null) {
                try {
                    rows.add(new Row(keys, command.getName()));
                } catch (NotDefinedException e) {
                    rows.add(new Row(keys, command.getId()));
                }
            }
        }
        return rows;
    }
}
