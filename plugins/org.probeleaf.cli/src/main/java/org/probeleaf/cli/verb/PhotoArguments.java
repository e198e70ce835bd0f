// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.nio.file.Path;

import org.probeleaf.cli.io.Problem;
import org.probeleaf.photo.graticule.Corners;
import org.probeleaf.photo.graticule.Divisions;
import org.probeleaf.photo.picture.Picture;
import org.probeleaf.photo.picture.PictureReader;
import org.probeleaf.photo.reading.PhotoOptions;
import org.probeleaf.photo.reading.PhotoReader;
import org.probeleaf.photo.trace.TraceColour;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.waveform.format.CaptureException;

import picocli.CommandLine.Option;

/** What a command line says of the photograph of a screen. */
final class PhotoArguments {

    @Option(names = "--per-division", paramLabel = "V,T", description = {
        "Of a photograph: volts and time per division, as 1V,20us."})
    private String perDivision;

    @Option(names = "--divisions", paramLabel = "NxM", description = {
        "Of a photograph: how many divisions the graticule has, across by up, as 10x8."})
    private String divisions;

    @Option(names = "--corners", paramLabel = "X,Y;…", description = {
        "Of a photograph: the four corners of the graticule in pixels, in any order, where they are not found."})
    private String corners;

    @Option(names = "--zero", paramLabel = "DIV", description = {
        "Of a photograph: how many divisions above the centre 0 V lies; below it negative."})
    private String zero;

    @Option(names = "--trace", paramLabel = "COLOUR", description = {
        "Of a photograph: the colour of the trace, as yellow, #ffe000, or a pixel of it, as 512,300."})
    private String trace;

    /** Whether anything is said. */
    boolean any() {
        return perDivision != null || divisions != null || corners != null || zero != null || trace != null;
    }

    /** Refuses what is said of a photograph where the file is none. */
    void none(Path file) {
        if (any()) {
            throw Problem.usage("--per-division, --divisions, --corners, --zero and --trace go with a photograph; " + file
                    + " is none");
        }
    }

    /**
     * What is said.
     *
     * @param file  its name, for what goes wrong
     * @param bytes of the photograph
     */
    PhotoOptions options(Path file, byte[] bytes) {
        if (perDivision == null) {
            throw Problem.usage(file + " is a photograph; say volts and time per division, as --per-division 1V,20us");
        }
        String[] scale = perDivision.split("[,;]");
        if (scale.length != 2) {
            throw Problem.usage("--per-division: volts and time are expected, as 1V,20us");
        }
        double volts = OptionValue.of("--per-division", scale[0].strip(), QuantityKind.VOLTAGE_DC);
        double seconds = OptionValue.of("--per-division", scale[1].strip(), QuantityKind.TIME);
        if (!(volts > 0) || !(seconds > 0)) {
            throw Problem.usage("--per-division: volts and time above zero are expected, as 1V,20us");
        }
        PhotoOptions options = PhotoOptions.of(volts, seconds);
        String at = "";
        try {
            if (divisions != null) {
                at = "--divisions";
                options = options.withDivisions(Divisions.parse(divisions));
            }
            if (corners != null) {
                at = "--corners";
                options = options.withCorners(Corners.parse(corners));
            }
            if (zero != null) {
                at = "--zero";
                options = options.withZero(divisions(zero));
            }
            if (trace != null) {
                at = "--trace";
                options = options.withColour(colour(file, bytes));
            }
        } catch (IllegalArgumentException e) {
            throw Problem.usage(at + ": " + e.getMessage());
        }
        return options;
    }

    private static double divisions(String text) {
        try {
            return Double.parseDouble(text.strip().replaceFirst("(?i)\\s*div$", ""));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("\"" + text + "\" is no number of divisions, as -2 or 1.5");
        }
    }

    private TraceColour colour(Path file, byte[] bytes) {
        if (!trace.matches("\\s*\\d+\\s*,\\s*\\d+\\s*")) {
            return TraceColour.parse(trace);
        }
        try {
            Picture picture = PictureReader.read(bytes);
            String[] xy = trace.split(",");
            double x = Double.parseDouble(xy[0]);
            double y = Double.parseDouble(xy[1]);
            if (x >= picture.width() || y >= picture.height()) {
                throw new IllegalArgumentException("the picture has " + picture.width() + " by " + picture.height() + " pixels");
            }
            return new TraceColour(picture.at(x, y));
        } catch (CaptureException e) {
            throw Problem.input(file + ": " + e.getMessage(), e);
        }
    }

    /** Whether a file is a photograph, by its first bytes. */
    static boolean isPhoto(byte[] head) {
        return PhotoReader.isPhoto(head);
    }
}
