// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.app;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.framework.FrameworkUtil;

/** Starts and stops the window. Called by Equinox on the main thread. */
public final class WorkbenchApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        Display.setAppName("Probeleaf");
        Display display = PlatformUI.createDisplay();
        try {
            int code = PlatformUI.createAndRunWorkbench(display, new ProbeleafAdvisor(fileToOpen(context.getArguments())));
            return code == PlatformUI.RETURN_RESTART ? IApplication.EXIT_RESTART : IApplication.EXIT_OK;
        } finally {
            display.dispose();
            endFramework();
        }
    }

    /** Equinox started from its jar goes on after its application has ended, and with it the process; this ends it. */
    private static void endFramework() {
        Bundle framework = FrameworkUtil.getBundle(WorkbenchApplication.class).getBundleContext().getBundle(0);
        new Thread(() -> {
            try {
                framework.stop();
            } catch (BundleException e) {
                throw new IllegalStateException("the window is closed but its process cannot be ended", e);
            }
        }, "end").start();
    }

    /** The file named on the command line: the last argument that is no option. */
    private static Optional<Path> fileToOpen(Map<?, ?> arguments) {
        if (!(arguments.get(IApplicationContext.APPLICATION_ARGS) instanceof String[] args) || args.length == 0) {
            return Optional.empty();
        }
        String last = args[args.length - 1];
        return last.startsWith("-") ? Optional.empty() : Optional.of(Path.of(last).toAbsolutePath().normalize());
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            IWorkbench workbench = PlatformUI.getWorkbench();
            workbench.getDisplay().syncExec(workbench::close);
        }
    }
}
