// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.job.Job;
import org.probeleaf.job.change.AddCapture;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.photo.reading.PhotoOptions;
import org.probeleaf.photo.reading.PhotoReader;
import org.probeleaf.photo.reading.PhotoWords;
import org.probeleaf.schematic.checksum.Sha256;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.waveform.format.CaptureException;
import org.probeleaf.waveform.format.ImportOptions;
import org.probeleaf.waveform.format.ImportWords;
import org.probeleaf.waveform.format.Imported;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code capture}: pins a waveform. */
@Command(name = "capture", description = {"Pin a captured waveform to a place on a job's sheets. The job keeps its file"
        + " unchanged, and how it is to be read. What was assumed in reading it is said.", "",
    "A file that cannot be read is not pinned."})
public final class CaptureCommand extends ChangeVerb {

    /** A capture larger than this is no help in a job file that is to be sent. */
    private static final long LARGEST = 512L << 20;

    @Parameters(index = "2", paramLabel = "CAPTURE", description = {
        "The file: delimited text, VCD or WAV, or the photograph of an oscilloscope's screen."})
    private Path capture;

    @Option(names = "--note", paramLabel = "T", defaultValue = "", description = "A remark on the capture.")
    private String note;

    @Mixin
    private PhotoArguments photo = new PhotoArguments();

    @Mixin
    private ReadAsOptions readAs = new ReadAsOptions();

    private byte[] bytes;
    private Imported read;

    public CaptureCommand(Console console) {
        super(console);
    }

    @Override
    Change change(Place place, Anchor anchor) throws IOException {
        ReadAsOptions.checkFile(capture);
        if (Files.size(capture) > LARGEST) {
            throw Problem.input(capture + ": is larger than " + (LARGEST >> 20)
                    + " MB; cut out the part that matters and pin that", null);
        }
        bytes = Files.readAllBytes(capture);
        return new AddCapture(CaptureMark.of(place, anchor, capture.getFileName().toString(), Sha256.of(bytes),
                bytes.length, readWith(), note, Instant.now()));
    }

    /** Reads it, and says how as a job keeps it; what nothing can be made of is told before it is pinned. */
    private String readWith() throws IOException {
        ImportOptions options = readAs.options();
        if (!PhotoArguments.isPhoto(bytes)) {
            photo.none(capture);
            read = ReadAsOptions.read(capture, options);
            return ImportWords.of(options);
        }
        PhotoOptions said = photo.options(capture, bytes);
        try {
            read = PhotoReader.read(bytes, said).imported();
        } catch (CaptureException e) {
            throw Problem.input(capture + ": " + e.getMessage(), e);
        }
        return PhotoWords.of(said);
    }

    @Override
    void keep(Job job, Change change) throws IOException {
        job.addCapture(((AddCapture) change).capture(), bytes);
    }

    @Override
    void done(Change change) {
        CaptureMark mark = ((AddCapture) change).capture();
        say("Pinned " + mark.fileName() + " to " + mark.place().text() + " on sheet " + mark.page() + ".");
        say("Read as " + read.notes().format() + ", " + String.join(", ", read.capture().names()) + ":");
        read.notes().assumed().forEach(note -> say("  " + note));
    }
}
