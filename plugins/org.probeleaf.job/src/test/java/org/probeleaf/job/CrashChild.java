// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Instant;

import org.probeleaf.job.change.AddCorrection;
import org.probeleaf.job.change.AddNote;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Spot;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/** The process that {@link CrashTest} kills: applies notes and corrections to a job and says so after each. */
public final class CrashChild {

    private CrashChild() {
    }

    /**
     * @param args the job, the number of the first change, how many changes
     */
    public static void main(String[] args) throws Exception {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true);
        int first = Integer.parseInt(args[1]);
        try (Job job = Job.open(Path.of(args[0]))) {
            out.println("open");
            for (int i = first; i < first + Integer.parseInt(args[2]); i++) {
                job.apply(change(i));
                out.println(i);
            }
            out.println("end");
        }
    }

    /** Notes, and every fourth a correction. */
    private static Change change(int i) {
        Instant when = Instant.parse("2026-03-01T09:30:00Z");
        return i % 4 == 3 ? new AddCorrection(KeptCorrection.of(
                new Correction.Name(Spot.of(1, new Point(i, i)), "net " + i), when))
                : new AddNote(NoteMark.of(Place.parse("IC" + i), new Anchor(1, new Point(i, i)), "note " + i, when));
    }
}
