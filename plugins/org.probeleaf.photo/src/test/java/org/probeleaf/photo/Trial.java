// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo;

import java.io.IOException;
import java.util.Random;

import org.probeleaf.photo.graticule.Corners;
import org.probeleaf.photo.graticule.Divisions;
import org.probeleaf.photo.reading.PhotoOptions;
import org.probeleaf.photo.reading.PhotoReader;
import org.probeleaf.photo.reading.PhotoReading;
import org.probeleaf.waveform.format.CaptureException;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.WaveMeasurer;

/** One made photograph, read, and how far its figures are out. */
record Trial(int seed, MadeWave wave, Look look, MadePhoto photo, Measures truth, PhotoReading reading, Measures measured,
        String error) {

    static Trial of(int seed, boolean bench, boolean marked) throws IOException {
        Random random = new Random(seed * 7919L + (bench ? 5 : 0));
        MadeWave wave = MadeWave.of(random);
        Look look = bench ? Look.bench(random) : Look.plain(random);
        MadePhoto photo = MadePhoto.of(wave, look, random, 0.8f);
        PhotoOptions options = PhotoOptions.of(1, 1).withDivisions(new Divisions(look.across(), look.up()));
        if (marked) {
            options = options.withCorners(Corners.sorted(photo.marked(random, 2)));
        }
        Measures truth = WaveMeasurer.standard().measure(wave.ideal(look.across()));
        try {
            PhotoReading reading = PhotoReader.read(photo.jpeg, options);
            return new Trial(seed, wave, look, photo, truth, reading,
                    WaveMeasurer.standard().measure(reading.imported().capture().channels().get(0)), null);
        } catch (CaptureException e) {
            return new Trial(seed, wave, look, photo, truth, null, null, e.getMessage());
        }
    }

    /** How far a corner is out at most, in pixels; infinite where nothing was read. */
    double cornersOut() {
        double most = reading == null ? Double.POSITIVE_INFINITY : 0;
        for (int i = 0; i < 4 && reading != null; i++) {
            most = Math.max(most, reading.graticule().map().corners().list().get(i).distance(photo.corners.get(i)));
        }
        return most;
    }

    double amplitudeOut() {
        return reading == null ? Double.POSITIVE_INFINITY
                : Math.abs(measured.amplitude().value() / truth.amplitude().value() - 1);
    }

    double periodOut() {
        return reading == null || !measured.period().known() ? Double.POSITIVE_INFINITY
                : Math.abs(measured.period().value() / truth.period().value() - 1);
    }

    boolean within(double share) {
        return amplitudeOut() <= share && periodOut() <= share;
    }

    boolean covered() {
        return reading != null && measured.amplitude().admits(truth.amplitude().value())
                && measured.period().admits(truth.period().value());
    }

    @Override
    public String toString() {
        return String.format("seed %d %s screen %d: corners %.1f px, confidence %.2f, amplitude %.2f %% (±%.2f), period %.2f %% (±%.2f)%s%s",
                seed, wave, look.screen(), cornersOut(), reading == null ? 0 : reading.graticule().confidence(),
                100 * amplitudeOut(), measured == null ? 0 : 100 * measured.amplitude().uncertainty() / truth.amplitude().value(),
                100 * periodOut(), measured == null ? 0 : 100 * measured.period().uncertainty() / truth.period().value(),
                covered() ? "" : " NOT COVERED", error == null ? "" : " " + error);
    }
}
