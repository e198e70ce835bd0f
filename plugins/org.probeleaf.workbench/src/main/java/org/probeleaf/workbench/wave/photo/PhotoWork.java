// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.photo;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

import org.eclipse.swt.widgets.Display;
import org.probeleaf.photo.graticule.Graticule;
import org.probeleaf.photo.picture.Picture;
import org.probeleaf.photo.reading.PhotoOptions;
import org.probeleaf.photo.reading.PhotoReader;
import org.probeleaf.photo.reading.PhotoReading;
import org.probeleaf.waveform.format.CaptureException;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.WaveMeasurer;

/** Reads a photograph on a thread of its own, again and again as more is said of it; only the last answer is told. */
final class PhotoWork {

    /**
     * What came of it.
     *
     * @param options   that were asked for
     * @param graticule where it lies, or null where none was found
     * @param reading   what was read, or null
     * @param measures  of it, or null
     * @param problem   why there is none, in a sentence, or null
     */
    record Result(PhotoOptions options, Graticule graticule, PhotoReading reading, Measures measures, String problem) {
    }

    private final ExecutorService thread = Executors.newSingleThreadExecutor(r -> {
        Thread t = new Thread(r, "photograph");
        t.setDaemon(true);
        return t;
    });
    private final AtomicInteger last = new AtomicInteger();
    private final Picture picture;
    private final Display display;
    private final Consumer<Result> told;
    private PhotoOptions known;
    private Graticule graticule;

    /** @param told on the display thread */
    PhotoWork(Picture picture, Display display, Consumer<Result> told) {
        this.picture = picture;
        this.display = display;
        this.told = told;
    }

    void ask(PhotoOptions options) {
        int number = last.incrementAndGet();
        thread.execute(() -> {
            if (number == last.get()) {
                Result result = work(options);
                if (!display.isDisposed()) {
                    display.asyncExec(() -> {
                        if (number == last.get()) {
                            told.accept(result);
                        }
                    });
                }
            }
        });
    }

    private Result work(PhotoOptions options) {
        try {
            if (known == null || known.corners() != options.corners() || !java.util.Objects.equals(known.divisions(),
                    options.divisions())) {
                known = null;
                graticule = null;
                graticule = PhotoReader.graticule(picture, options);
                known = options;
            }
            PhotoReading reading = PhotoReader.read(picture, graticule, options);
            return new Result(options, graticule, reading, WaveMeasurer.standard().measure(
                    reading.imported().capture().channels().get(0)), null);
        } catch (CaptureException e) {
            return new Result(options, graticule, null, null, e.getMessage());
        }
    }

    void close() {
        last.incrementAndGet();
        thread.shutdown();
    }
}
