// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.photo;

import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.photo.graticule.Corners;
import org.probeleaf.photo.picture.Picture;
import org.probeleaf.photo.reading.PhotoOptions;
import org.probeleaf.photo.reading.PhotoReading;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.plot.PlotPaint;

/** Shows a photograph with what was found on it, and asks for the rest. */
final class PhotoDialog extends TitleAreaDialog {

    private static final String WORDS = "Say volts and time per division. Look whether the blue lines lie on the graticule and"
            + " the red one on the trace; drag a corner where they do not.";
    private static final String WORKING = "Looking for the graticule and the trace\u2026";

    private final String name;
    private final String ok;
    private final Picture picture;
    private PhotoOptions options;
    private PhotoReading reading;
    private PhotoWork work;
    private PhotoCanvas canvas;
    private PhotoFields fields;
    private Canvas preview;
    private Label figures;
    private Text notes;
    private PlotTrace plot;

    /**
     * @param name  of the file and the place
     * @param ok    what the button says that ends it well
     * @param start what is said already
     */
    PhotoDialog(Shell parent, String name, String ok, Picture picture, PhotoOptions start) {
        super(parent);
        this.name = name;
        this.ok = ok;
        this.picture = picture;
        this.options = start;
        setShellStyle(getShellStyle() | SWT.RESIZE | SWT.MAX);
        setHelpAvailable(false);
    }

    /** What is said of the photograph, after OK. */
    PhotoOptions options() {
        return options;
    }

    /** What was read, after OK. */
    PhotoReading reading() {
        return reading;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Photograph of a screen");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(name.replace("&", "&&"));
        setMessage(WORKING);
        Composite both = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(10, 8).spacing(12, 6).applyTo(both);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(both);
        canvas = new PhotoCanvas(both, picture, this::moved, rgb -> fields.colour(rgb));
        GridDataFactory.fillDefaults().grab(true, true).hint(820, 600).applyTo(canvas.control());
        Composite side = new Composite(both, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(6, 8).applyTo(side);
        GridDataFactory.fillDefaults().grab(false, true).hint(380, SWT.DEFAULT).applyTo(side);
        fields = new PhotoFields(side, options, this::said, () -> canvas.pick(), () -> moved(null));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(fields.control());
        preview = new Canvas(side, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, 150).applyTo(preview);
        PlotPaint paint = new PlotPaint(new Look(preview));
        Look look = new Look(preview);
        preview.addListener(SWT.Paint, e -> paint(e.gc, paint, look));
        figures = new Label(side, SWT.NONE);
        figures.setText("\n");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(figures);
        notes = new Text(side, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, 178).applyTo(notes);
        work = new PhotoWork(picture, parent.getDisplay(), this::told);
        area.addListener(SWT.Dispose, e -> work.close());
        fields.focus();
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, ok, true).setEnabled(false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        ask();
    }

    private void paint(GC gc, PlotPaint paint, Look look) {
        Point size = preview.getSize();
        gc.setBackground(look.colour(Palette.WHITE));
        gc.fillRectangle(0, 0, size.x, size.y);
        if (plot != null) {
            paint.paint(gc, Plot.of(List.of(plot), List.of(), Math.max(100, size.x), Math.max(60, size.y)), 0, 0);
        }
    }

    private void moved(Corners corners) {
        options = options.withCorners(corners);
        ask();
    }

    private void said() {
        ask();
    }

    private void ask() {
        try {
            options = fields.options(options);
        } catch (IllegalArgumentException e) {
            state(null, null, e.getMessage());
            return;
        }
        state(null, null, null);
        setMessage(WORKING);
        work.ask(options);
    }

    private void told(PhotoWork.Result result) {
        if (preview.isDisposed()) {
            return;
        }
        canvas.show(result.graticule() == null ? null : result.graticule().map(),
                result.reading() == null ? null : result.reading().trace());
        state(result.reading(), result.measures(), result.problem());
    }

    private void state(PhotoReading now, Measures measures, String problem) {
        reading = now;
        plot = now == null || !options.scaled() ? null
                : PlotTrace.of("as read", now.imported().capture().channels().get(0), Ink.trace(0));
        figures.setText(measures == null || !options.scaled() ? "\n" : PhotoFigures.of(measures));
        notes.setText(now == null || !options.scaled() ? "" : String.join("\n", now.imported().notes().assumed()));
        setErrorMessage(problem == null ? null : inTheWindow(problem));
        if (problem == null) {
            setMessage(WORDS, now != null && now.graticule().found() && now.graticule().confidence() < 0.75
                    ? IMessageProvider.WARNING : IMessageProvider.NONE);
        }
        getButton(IDialogConstants.OK_ID).setEnabled(now != null && options.scaled());
        preview.redraw();
    }

    /** What the command line's sentences say of options is done by hand here. */
    private static String inTheWindow(String problem) {
        return problem.replaceFirst("; give its four corners.*", "; drag the four corners onto it")
                .replaceFirst("; say its colour, as.*", "; take its colour from the picture, or move the corners");
    }
}
