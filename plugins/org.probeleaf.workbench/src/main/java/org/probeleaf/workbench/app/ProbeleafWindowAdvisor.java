// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.probeleaf.workbench.command.CapturePin;
import org.probeleaf.workbench.command.UndoHandler;
import org.probeleaf.workbench.sheet.SheetEditor;
import org.probeleaf.workbench.start.EmptyWindow;
import org.probeleaf.workbench.start.Opening;

/** Says how a window looks, what it opens first, and what it does with files dropped on it. */
final class ProbeleafWindowAdvisor extends WorkbenchWindowAdvisor {

    private final Optional<Path> file;

    ProbeleafWindowAdvisor(IWorkbenchWindowConfigurer configurer, Optional<Path> file) {
        super(configurer);
        this.file = file;
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new ActionBarAdvisor(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
        configurer.setInitialSize(new Point(1480, 940));
        configurer.setTitle("Probeleaf");
        configurer.setShowCoolBar(true);
        configurer.setShowMenuBar(true);
        configurer.setShowStatusLine(false);
        configurer.setShowPerspectiveBar(false);
        configurer.addEditorAreaTransfer(FileTransfer.getInstance());
        configurer.configureEditorAreaDropListener(new Drop());
    }

    @Override
    public void postWindowOpen() {
        IWorkbenchPage page = getWindowConfigurer().getWindow().getActivePage();
        UndoHandler.activate(getWindowConfigurer().getWindow());
        new WindowTitle(getWindowConfigurer());
        EmptyWindow.watch(page);
        file.ifPresentOrElse(f -> Opening.open(page, f), () -> EmptyWindow.show(page));
    }

    private final class Drop extends DropTargetAdapter {
        @Override
        public void drop(DropTargetEvent event) {
            if (event.data instanceof String[] files) {
                IWorkbenchPage page = getWindowConfigurer().getWindow().getActivePage();
                for (Path file : Arrays.stream(files).map(Path::of).toList()) {
                    if (page.getActiveEditor() instanceof SheetEditor sheet && !sheetOrJob(file)) {
                        CapturePin.drop(sheet, file, new Point(event.x, event.y));
                    } else {
                        Opening.open(page, file);
                    }
                }
            }
        }

        private boolean sheetOrJob(Path file) {
            return Files.isDirectory(file) || file.toString().toLowerCase(Locale.ROOT).matches(".*\\.(?:pdf|probeleaf)");
        }
    }
}
