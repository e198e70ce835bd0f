// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.TreePath;
import org.eclipse.jface.viewers.TreeSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.trace.follow.Followed.Node;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.Route;

/** The tree of a route: the pins of the first net, and below a pin the nets that are reached through its part. */
final class RouteTree {

    private static final int SHOWN_OPEN = 3;

    private final TreeViewer viewer;
    private final TreeColumnLayout layout = new TreeColumnLayout();
    private final Look look;
    private final Font bold;
    private Route route;
    private boolean going;

    /**
     * @param chosen told of the row that the person has chosen
     * @param open   what double click and Enter do
     */
    RouteTree(Composite parent, Consumer<RouteRow> chosen, Consumer<RouteRow> open) {
        Composite frame = new Composite(parent, SWT.NONE);
        frame.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        frame.setLayout(layout);
        viewer = new TreeViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        look = new Look(frame);
        bold = look.font(-1, true);
        viewer.getTree().setHeaderVisible(true);
        viewer.getTree().setFont(look.font(-1, false));
        ColumnViewerToolTipSupport.enableFor(viewer);
        viewer.setUseHashlookup(true);
        viewer.setContentProvider(new Content());
        viewer.addSelectionChangedListener(e -> {
            if (!going && e.getSelection() instanceof IStructuredSelection s && !s.isEmpty()) {
                chosen.accept((RouteRow) s.getFirstElement());
            }
        });
        viewer.addOpenListener(e -> {
            if (e.getSelection() instanceof IStructuredSelection s && !s.isEmpty()) {
                open.accept((RouteRow) s.getFirstElement());
            }
        });
    }

    /** Adds a column; the rows of nets are in bold. */
    void column(String title, int weight, int minimum, Function<RouteRow, String> text, Function<RouteRow, Image> image) {
        TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.LEFT);
        column.getColumn().setText(title);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, minimum, true));
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                String s = text.apply((RouteRow) row);
                return s == null ? "" : s;
            }

            @Override
            public Image getImage(Object row) {
                return image == null ? null : image.apply((RouteRow) row);
            }

            @Override
            public Font getFont(Object row) {
                return row instanceof RouteRow.OfNet ? bold : null;
            }

            @Override
            public Color getForeground(Object row) {
                return row instanceof RouteRow.OfEnd ? look.colour(Palette.QUIET) : null;
            }

            @Override
            public String getToolTipText(Object row) {
                return getText(row);
            }
        });
    }

    /** @param next the route, or null for none */
    void show(Route next) {
        if (!viewer.getTree().isDisposed()) {
            route = next;
            viewer.setInput(next == null ? new Object() : next);
            if (next != null) {
                viewer.expandToLevel(1 + 2 * SHOWN_OPEN);
            }
        }
    }

    /** Whether it is this route that is shown. */
    boolean shows(Route other) {
        return route == other;
    }

    /** Marks the row of a net without telling of it; the first net has none. */
    void mark(Node node) {
        if (node.step() == null || viewer.getTree().isDisposed()) {
            return;
        }
        going = true;
        viewer.setSelection(new TreeSelection(path(node)), true);
        going = false;
    }

    private TreePath path(Node node) {
        List<Node> way = route.followed().wayTo(node);
        TreePath path = TreePath.EMPTY;
        for (int i = 1; i < way.size(); i++) {
            Node before = way.get(i - 1);
            Node net = way.get(i);
            RouteRow pin = RouteRow.under(route, before).stream().filter(r -> r instanceof RouteRow.OfPin p
                    && p.pin().equals(route.departure(net))).findFirst().orElse(null);
            if (pin != null) {
                path = path.createChildPath(pin);
            }
            path = path.createChildPath(new RouteRow.OfNet(net));
        }
        return path;
    }

    void focus() {
        viewer.getTree().setFocus();
    }

    private final class Content implements ITreeContentProvider {
        @Override
        public Object[] getElements(Object input) {
            return input instanceof Route r ? RouteRow.under(r, r.root()).toArray() : new Object[0];
        }

        @Override
        public Object[] getChildren(Object row) {
            return RouteRow.under(route, (RouteRow) row).toArray();
        }

        @Override
        public Object getParent(Object row) {
            return null;
        }

        @Override
        public boolean hasChildren(Object row) {
            return !RouteRow.under(route, (RouteRow) row).isEmpty();
        }
    }
}
