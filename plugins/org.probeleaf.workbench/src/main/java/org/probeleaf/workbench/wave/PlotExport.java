// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.SvgPlot;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.plot.PlotPaint;

/** Writes a plot as a picture: SVG for print, PNG for messages. */
final class PlotExport {

    private PlotExport() {
    }

    /** Asks for a name and writes; what goes wrong is told. */
    static void ask(Shell shell, Plot plot, Look look) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText("Export the plot");
        dialog.setFilterNames(new String[] {"SVG, for print", "PNG"});
        dialog.setFilterExtensions(new String[] {"*.svg", "*.png"});
        dialog.setFileName("waveform.svg");
        dialog.setOverwrite(true);
        String name = dialog.open();
        if (name != null) {
            try {
                write(Path.of(name), plot, look, shell.getDisplay());
            } catch (IOException e) {
                MessageDialog.openError(shell, "Export", name + " cannot be written (" + e.getMessage()
                        + "); choose another folder.");
            }
        }
    }

    static void write(Path file, Plot plot, Look look, Display display) throws IOException {
        if (file.toString().toLowerCase(Locale.ROOT).endsWith(".png")) {
            Files.write(file, png(plot, look, display));
        } else {
            Files.writeString(file, SvgPlot.of(plot));
        }
    }

    private static byte[] png(Plot plot, Look look, Display display) {
        Image image = new Image(display, (int) plot.width(), (int) plot.height());
        GC gc = new GC(image);
        gc.setBackground(display.getSystemColor(SWT.COLOR_WHITE));
        gc.fillRectangle(image.getBounds());
        new PlotPaint(look).paint(gc, plot, 0, 0);
        gc.dispose();
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {image.getImageData()};
        image.dispose();
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        loader.save(out, SWT.IMAGE_PNG);
        return out.toByteArray();
    }
}
