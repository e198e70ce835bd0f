// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.probeleaf.handover.plot.PdfPlot;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.SvgPlot;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.plot.PlotPaint;

/** Writes a plot as a picture: PDF or SVG for print, PNG for messages. The ending of the name says which. */
public final class PlotExport {

    /** Pixels of a PNG for each of the screen: sharp where it is drawn larger. */
    private static final int SHARP = 2;

    private PlotExport() {
    }

    /** Asks for a name and writes; what goes wrong is told. */
    static void ask(Shell shell, Plot plot, String name, Look look) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText("Export the plot");
        dialog.setFilterNames(new String[] {"PDF, for print", "SVG, for print", "PNG, a picture"});
        dialog.setFilterExtensions(new String[] {"*.pdf", "*.svg", "*.png"});
        dialog.setFileName(name + ".pdf");
        dialog.setOverwrite(true);
        String file = dialog.open();
        if (file != null) {
            try {
                write(Path.of(file), plot, look, shell.getDisplay());
            } catch (IOException e) {
                MessageDialog.openError(shell, "Export", file + " cannot be written (" + e.getMessage()
                        + "); choose another folder.");
            }
        }
    }

    /** Writes a file; what ends in nothing known is an SVG. */
    public static void write(Path file, Plot plot, Look look, Display display) throws IOException {
        String name = file.toString().toLowerCase(Locale.ROOT);
        Files.write(file, name.endsWith(".png") ? png(plot, look, display) : name.endsWith(".pdf") ? PdfPlot.document(plot)
                : SvgPlot.of(plot).getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] png(Plot plot, Look look, Display display) {
        Image image = new Image(display, SHARP * (int) plot.width(), SHARP * (int) plot.height());
        GC gc = new GC(image);
        gc.setBackground(display.getSystemColor(SWT.COLOR_WHITE));
        gc.fillRectangle(image.getBounds());
        Transform larger = new Transform(display);
        larger.scale(SHARP, SHARP);
        gc.setTransform(larger);
        new PlotPaint(look).paint(gc, plot, 0, 0);
        gc.dispose();
        larger.dispose();
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {image.getImageData()};
        image.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        loader.save(out, SWT.IMAGE_PNG);
        return out.toByteArray();
    }
}
