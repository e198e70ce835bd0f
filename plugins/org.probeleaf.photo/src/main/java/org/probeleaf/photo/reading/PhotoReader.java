// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.probeleaf.photo.graticule.Divisions;
import org.probeleaf.photo.graticule.Graticule;
import org.probeleaf.photo.graticule.GraticuleFinder;
import org.probeleaf.photo.picture.Picture;
import org.probeleaf.photo.picture.PictureReader;
import org.probeleaf.photo.trace.FollowedTrace;
import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;
import org.probeleaf.waveform.format.CaptureException;
import org.probeleaf.waveform.format.ImportNotes;
import org.probeleaf.waveform.format.Imported;
import org.probeleaf.waveform.measure.Si;

/** Reads the photograph of a screen as a capture. */
public final class PhotoReader {

    /** Whoever says nothing else has a graticule of so many divisions. */
    public static final Divisions USUAL = new Divisions(10, 8);

    private static final double LEAST_COVERED = 0.1;
    private static final double SURE = 0.75;
    /** How far a line of the graticule may be out, in pixels of the picture, where lines were measured. */
    private static final double MEASURED = 0.8;
    /** The same where corners were marked and no lines seen. */
    private static final double MARKED = 3;

    private PhotoReader() {
    }

    /** Whether a file begins as a picture that can be read. */
    public static boolean isPhoto(byte[] head) {
        return PictureReader.isPicture(head);
    }

    /**
     * Reads a file.
     *
     * @throws CaptureException where nothing can be made of it; one line says what is wrong and what to do
     */
    public static PhotoReading read(byte[] bytes, PhotoOptions options) throws CaptureException {
        if (!options.scaled()) {
            throw new CaptureException("it is a photograph; say volts and time per division, as --per-division 1V,20us");
        }
        return read(PictureReader.read(bytes), options);
    }

    /** The same of a picture; volts and seconds that were not said count as 1 a division. */
    public static PhotoReading read(Picture picture, PhotoOptions options) throws CaptureException {
        return read(picture, graticule(picture, options), options);
    }

    /**
     * The graticule of a picture, found or marked.
     *
     * @throws CaptureException where none is found
     */
    public static Graticule graticule(Picture picture, PhotoOptions options) throws CaptureException {
        try {
            GraticuleFinder finder = new GraticuleFinder(picture);
            if (options.corners() != null) {
                return finder.marked(options.divisions() == null ? USUAL : options.divisions(), options.corners());
            }
            return finder.find(options.divisions()).orElseThrow(() -> new CaptureException(
                    "no graticule" + (options.divisions() == null ? "" : " of " + options.divisions().text() + " divisions")
                            + " is found in the picture; give its four corners in pixels, as --corners 210,95;980,110;970,720;205,700"));
        } catch (IllegalArgumentException e) {
            throw new CaptureException(e.getMessage());
        }
    }

    /** The same on a graticule that is known. */
    public static PhotoReading read(Picture picture, Graticule graticule, PhotoOptions options) throws CaptureException {
        FollowedTrace trace = FollowedTrace.of(picture, graticule.map(), options.colour());
        if (trace == null || trace.covered() < LEAST_COVERED) {
            throw new CaptureException("no trace " + (options.colour() == null ? "" : "of the colour " + options.colour().text() + " ")
                    + "stands out on the screen; say its colour, as --trace yellow, or mark the corners of the graticule anew");
        }
        Channel channel = channel(graticule, trace, options);
        return new PhotoReading(graticule, trace, new Imported(new Capture(List.of(channel), List.of()),
                new ImportNotes("photograph of a screen", notes(graticule, trace, options, channel))));
    }

    private static double perDivision(double said) {
        return said > 0 ? said : 1;
    }

    private static Channel channel(Graticule graticule, FollowedTrace trace, PhotoOptions options) {
        double volts = perDivision(options.volts());
        double seconds = perDivision(options.seconds());
        double zero = graticule.map().divisions().up() / 2.0 - options.zero();
        double[] values = new double[trace.down().length];
        for (int i = 0; i < values.length; i++) {
            values[i] = (zero - trace.down()[i]) * volts;
        }
        double step = seconds / trace.perDivision();
        double out = gridUnsure(graticule);
        return new Channel("trace", "V", new TimeBase.Uniform(step / 2, step, values.length), Samples.of(values),
                (trace.pen() + 2 * out) * volts, false, (out + 0.5 / trace.perDivision()) * seconds);
    }

    /** How far a line of the graticule may be from where it is taken for, in divisions. */
    private static double gridUnsure(Graticule graticule) {
        boolean lines = graticule.found() || graticule.confidence() > 0.5;
        return (lines ? MEASURED : MARKED) / graticule.map().pixels();
    }

    private static Optional<String> second(FollowedTrace trace) {
        return switch (trace.second()) {
            case NONE -> Optional.empty();
            case ALIKE -> Optional.of("There seems to be another trace of the same colour; one was followed, look whether it is"
                    + " the right one.");
            case UNLIKE -> Optional.of("There seems to be a trace of another colour; one was followed, say the colour of the"
                    + " other to follow that.");
        };
    }

    private static List<String> notes(Graticule graticule, FollowedTrace trace, PhotoOptions options, Channel channel) {
        List<String> notes = new ArrayList<>();
        String corners = graticule.map().corners().text();
        String size = graticule.map().divisions().text() + " divisions";
        if (graticule.found()) {
            notes.add("The graticule of " + size + (graticule.assumed() ? " (assumed)" : "") + " was found at " + corners
                    + (graticule.confidence() < SURE ? String.format(Locale.ROOT,
                            ", with a confidence of %.0f %% only; look whether that is right.", 100 * graticule.confidence())
                            : String.format(Locale.ROOT, ", with a confidence of %.0f %%.", 100 * graticule.confidence())));
        } else {
            notes.add("The graticule of " + size + (options.divisions() == null ? " (assumed)" : "") + " lies at " + corners
                    + (graticule.confidence() > 0.5 ? ", as marked, moved onto its lines." : ", as marked."));
        }
        notes.add("0 V lies " + (options.zero() == 0 ? "at the centre of the screen, as nothing else was said."
                : String.format(Locale.ROOT, "%s divisions %s the centre, as said.", Si.text(Math.abs(options.zero()), ""),
                        options.zero() > 0 ? "above" : "below")));
        notes.add("The trace followed is " + (trace.darker() ? "darker than" : "brighter than") + " the screen, of the colour "
                + new org.probeleaf.photo.trace.TraceColour(trace.colour()).text()
                + (options.colour() == null ? ", found by itself." : ", as said."));
        notes.add("It is " + Si.text(trace.pen() * perDivision(options.volts()), 2, "V")
                + " thick; with the graticule, levels are uncertain by " + Si.text(channel.resolution() / 2, 2, "V")
                + " and times by " + Si.text(channel.jitter(), 2, "s") + ".");
        second(trace).ifPresent(notes::add);
        if (trace.covered() < 0.97) {
            notes.add(String.format(Locale.ROOT, "It is not seen in %.0f %% of the screen's width; gaps are left as gaps.",
                    100 * (1 - trace.covered())));
        }
        return notes;
    }
}
