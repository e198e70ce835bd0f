// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.app;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Says how the workbench as a whole behaves. */
final class ProbeleafAdvisor extends WorkbenchAdvisor {

    private final Optional<Path> file;

    /** @param file to open in the first window */
    ProbeleafAdvisor(Optional<Path> file) {
        this.file = file;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new ProbeleafWindowAdvisor(configurer, file);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return "org.probeleaf.workbench.look";
    }
}
