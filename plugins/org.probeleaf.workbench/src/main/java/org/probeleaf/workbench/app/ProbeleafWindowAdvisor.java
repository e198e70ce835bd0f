// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.app;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Says how a window looks and what it opens first. */
final class ProbeleafWindowAdvisor extends WorkbenchWindowAdvisor {

    private final Optional<Path> file;

    ProbeleafWindowAdvisor(IWorkbenchWindowConfigurer configurer, Optional<Path> file) {
        super(configurer);
        this.file = file;
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
        configurer.setInitialSize(new Point(1440, 920));
        configurer.setTitle("Probeleaf");
        configurer.setShowCoolBar(true);
        configurer.setShowStatusLine(false);
        configurer.setShowPerspectiveBar(false);
    }
}
