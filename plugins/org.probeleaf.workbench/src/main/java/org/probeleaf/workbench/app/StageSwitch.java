// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.app;

import java.util.Arrays;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PerspectiveAdapter;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.menus.WorkbenchWindowControlContribution;
import org.probeleaf.workbench.look.Look;

/** Switches between the stages of the job; the selection and the sheet stay. */
public final class StageSwitch extends WorkbenchWindowControlContribution {

    /** The stages in the order of the work. */
    private static final List<String> STAGES = List.of("look", "trace", "measure");

    @Override
    protected Control createControl(Composite parent) {
        ToolBar bar = new ToolBar(parent, SWT.FLAT | SWT.RIGHT);
        Look look = new Look(bar);
        for (String stage : STAGES) {
            IPerspectiveDescriptor perspective = PlatformUI.getWorkbench().getPerspectiveRegistry()
                    .findPerspectiveWithId("org.probeleaf.workbench." + stage);
            ToolItem item = new ToolItem(bar, SWT.RADIO);
            item.setText(perspective.getLabel());
            item.setImage(look.icon("bar/" + stage));
            item.setToolTipText("Stage: " + perspective.getLabel());
            item.setData(perspective);
            item.addListener(SWT.Selection, e -> {
                IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
                if (item.getSelection() && window != null && window.getActivePage() != null) {
                    window.getActivePage().setPerspective(perspective);
                }
            });
        }
        PerspectiveAdapter follower = new PerspectiveAdapter() {
            @Override
            public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
                show(bar, perspective);
            }
        };
        // While the window is being made there is none to listen to yet.
        bar.getDisplay().asyncExec(() -> follow(bar, follower));
        return bar;
    }

    private static void follow(ToolBar bar, PerspectiveAdapter follower) {
        if (bar.isDisposed()) {
            return;
        }
        for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
            if (window.getShell() == bar.getShell()) {
                window.addPerspectiveListener(follower);
                bar.addListener(SWT.Dispose, e -> window.removePerspectiveListener(follower));
                show(bar, window.getActivePage() == null ? null : window.getActivePage().getPerspective());
            }
        }
    }

    private static void show(ToolBar bar, IPerspectiveDescriptor perspective) {
        if (!bar.isDisposed()) {
            Arrays.stream(bar.getItems()).forEach(i -> i.setSelection(perspective != null
                    && ((IPerspectiveDescriptor) i.getData()).getId().equals(perspective.getId())));
        }
    }
}
