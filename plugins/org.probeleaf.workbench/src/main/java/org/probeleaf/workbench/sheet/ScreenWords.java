// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** What a person can read on a shell and press, for tests: the words of what is in sight, and where they are. */
final class ScreenWords {

    private final List<String> rows = new ArrayList<>();
    private final List<String> places = new ArrayList<>();
    /** Of places with the same words the first counts. */
    private final Set<String> named = new HashSet<>();

    /** @param shell with the dialogs over it */
    ScreenWords(Shell shell) {
        visit(shell);
        Arrays.stream(shell.getShells()).forEach(this::visit);
    }

    /** The rows of lists and trees and the words of labels, as a JSON array of text and middle, x and y. */
    String rows() {
        return rows.stream().collect(Collectors.joining(",", "[", "]"));
    }

    /** Tabs, buttons and tools by their words, with the middle of each on the screen, as a JSON object. */
    String places() {
        return places.stream().collect(Collectors.joining(",", "{", "}"));
    }

    private void visit(Control control) {
        if (!control.isVisible()) {
            return;
        }
        if (control instanceof Table table) {
            for (TableItem item : table.getItems()) {
                row(words(item::getText, table.getColumnCount()), table, item.getBounds());
            }
        } else if (control instanceof Tree tree) {
            visit(tree, tree.getItems());
        } else if (control instanceof Label label) {
            row(label.getText(), label.getParent(), label.getBounds());
        } else if (control instanceof Button button) {
            place(button.getText(), button.getParent(), button.getBounds());
        } else if (control instanceof ToolBar bar) {
            Arrays.stream(bar.getItems()).forEach(i -> place(i.getText(), bar, i.getBounds()));
        } else if (control instanceof Combo combo) {
            place(combo.getText(), combo.getParent(), combo.getBounds());
        } else if (control instanceof Text text && text.isEnabled()) {
            place(text.getText().isEmpty() ? text.getMessage() : text.getText(), text.getParent(), text.getBounds());
        } else if (control.getData("name") instanceof String name) {
            place(name, control.getParent(), control.getBounds());
        } else if (control instanceof CTabFolder folder) {
            Arrays.stream(folder.getItems()).filter(i -> i.isShowing())
                    .forEach(i -> place(i.getText(), folder, i.getBounds()));
        }
        if (control instanceof Composite composite) {
            Arrays.stream(composite.getChildren()).forEach(this::visit);
        }
    }

    private static String words(IntFunction<String> text, int columns) {
        return IntStream.range(0, columns).mapToObj(text).collect(Collectors.joining(" | "));
    }

    private void visit(Tree tree, TreeItem[] items) {
        for (TreeItem item : items) {
            row(words(item::getText, tree.getColumnCount()), tree, item.getBounds());
            if (item.getExpanded()) {
                visit(tree, item.getItems());
            }
        }
    }

    private void row(String text, Control parent, Rectangle area) {
        if (!text.isBlank()) {
            rows.add("[" + quoted(text) + "," + middle(parent, area) + "]");
        }
    }

    private void place(String text, Control parent, Rectangle area) {
        if (!text.isBlank() && named.add(text.strip())) {
            places.add(quoted(text.strip()) + ":[" + middle(parent, area) + "]");
        }
    }

    private static String middle(Control parent, Rectangle area) {
        Point p = parent.toDisplay(area.x + area.width / 2, area.y + area.height / 2);
        return p.x + "," + p.y;
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\s+", " ") + '"';
    }
}
