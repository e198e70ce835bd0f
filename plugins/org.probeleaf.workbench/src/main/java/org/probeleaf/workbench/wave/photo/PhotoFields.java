// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.photo;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.photo.graticule.Divisions;
import org.probeleaf.photo.reading.PhotoOptions;
import org.probeleaf.photo.trace.TraceColour;
import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.waveform.measure.Si;

/** What a person says of a photograph, in fields. */
final class PhotoFields {

    private static final String FOUND = "found by itself";

    private final Composite panel;
    private final Text volts;
    private final Text seconds;
    private final Combo divisions;
    private final Text zero;
    private final Combo colour;

    /**
     * @param changed called when anything else is said
     * @param asked   called to take the colour from the picture
     * @param again   called to find the corners anew
     */
    PhotoFields(Composite parent, PhotoOptions start, Runnable changed, Runnable asked, Runnable again) {
        panel = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(panel);
        volts = text("&Volts per division", "as 500mV", "volts");
        seconds = text("&Time per division", "as 20us", "time");
        label("&Divisions");
        divisions = new Combo(panel, SWT.DROP_DOWN);
        divisions.setItems(FOUND, "10x8", "12x8", "10x10", "14x8", "8x8");
        beside(divisions, "divisions");
        button("&Find corners", "Finds the corners of the graticule anew, and forgets where you moved them", again);
        zero = text("&0 V above centre", "divisions", "zero");
        zero.setToolTipText("How many divisions above the centre of the screen 0 V lies; below it negative");
        label("Tra&ce");
        colour = new Combo(panel, SWT.DROP_DOWN);
        colour.setItems(FOUND, "yellow", "green", "cyan", "blue", "magenta", "red", "orange", "amber", "white", "black");
        beside(colour, "colour");
        button("From &picture", "Click on the trace in the picture to take its colour", asked);
        volts.setText(start.volts() > 0 ? Si.text(start.volts(), "V") : "");
        seconds.setText(start.seconds() > 0 ? Si.text(start.seconds(), "s") : "");
        divisions.setText(start.divisions() == null ? FOUND : start.divisions().text());
        zero.setText(Si.text(start.zero(), ""));
        colour.setText(start.colour() == null ? FOUND : start.colour().text());
        for (org.eclipse.swt.widgets.Control c : new org.eclipse.swt.widgets.Control[] {volts, seconds, divisions, zero, colour}) {
            c.addListener(SWT.Modify, e -> changed.run());
        }
    }

    Composite control() {
        return panel;
    }

    void focus() {
        volts.setFocus();
    }

    private void label(String words) {
        Label label = new Label(panel, SWT.NONE);
        label.setText(words);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
    }

    private Text text(String words, String hint, String name) {
        label(words);
        Text text = new Text(panel, SWT.BORDER);
        text.setMessage(hint);
        wide(text, name);
        return text;
    }

    private void button(String words, String tip, Runnable action) {
        Button button = new Button(panel, SWT.PUSH);
        button.setText(words);
        button.setToolTipText(tip);
        button.addListener(SWT.Selection, e -> action.run());
        GridDataFactory.fillDefaults().applyTo(button);
    }

    /** A field that leaves room for a button. */
    private static void beside(org.eclipse.swt.widgets.Control control, String name) {
        control.setData("name", name);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(control);
    }

    private static void wide(org.eclipse.swt.widgets.Control control, String name) {
        control.setData("name", name);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(control);
    }

    /** Shows a colour that was taken from the picture. */
    void colour(int rgb) {
        colour.setText(new TraceColour(rgb).text());
    }

    /**
     * What is said, with the corners as they are.
     *
     * @throws IllegalArgumentException with one sentence where a field cannot be understood
     */
    PhotoOptions options(PhotoOptions before) {
        PhotoOptions now = before.withScale(value(volts, QuantityKind.VOLTAGE_DC), value(seconds, QuantityKind.TIME));
        String many = divisions.getText().strip();
        now = now.withDivisions(many.isEmpty() || many.equals(FOUND) ? null : Divisions.parse(many));
        now = now.withZero(zero());
        String hue = colour.getText().strip();
        return now.withColour(hue.isEmpty() || hue.equals(FOUND) ? null : TraceColour.parse(hue));
    }

    private double zero() {
        String said = zero.getText().strip().replace(',', '.').replace('\u2212', '-');
        try {
            return said.isEmpty() ? 0 : Double.parseDouble(said);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("\"" + said + "\" is no number of divisions, as -2 or 1.5");
        }
    }

    /** NaN where nothing is said yet. */
    private static double value(Text field, QuantityKind kind) {
        String said = field.getText().strip();
        if (said.isEmpty()) {
            return Double.NaN;
        }
        Quantity quantity = BenchValue.parse(said, kind).quantity();
        if (quantity.kind() != kind || !(quantity.value() > 0)) {
            throw new IllegalArgumentException("\"" + said + "\" is no " + kind.title() + " above zero");
        }
        return quantity.value();
    }
}
