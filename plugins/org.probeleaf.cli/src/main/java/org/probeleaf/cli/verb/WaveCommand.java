// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

import org.probeleaf.cli.answer.WaveJson;
import org.probeleaf.cli.answer.WaveText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.cli.io.PartBooks;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.photo.reading.PhotoOptions;
import org.probeleaf.photo.reading.PhotoReader;
import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.LogicLevels;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.waveform.format.CaptureException;
import org.probeleaf.waveform.format.ImportOptions;
import org.probeleaf.waveform.format.Imported;
import org.probeleaf.waveform.judge.ThresholdWords;
import org.probeleaf.waveform.judge.Thresholds;
import org.probeleaf.waveform.report.CaptureReport;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wave}: measures and judges a capture. */
@Command(name = "wave", description = {
    "Measure a captured waveform by IEEE Std 181, and say whether the signal lives, whether the next stage can read it,"
            + " and why. A capture is delimited text, VCD or WAV, or the photograph of an oscilloscope's screen; what was assumed"
            + " in reading it is said.", "",
    "Composite video is known by its sync: rates, levels and porches are measured, and whether a display would lock."})
public final class WaveCommand extends Verb {

    @Parameters(paramLabel = "CAPTURE", description = "The file.")
    private Path capture;

    @Option(names = "--channel", paramLabel = "NAME", description = "Only the channel of that name.")
    private String channel;

    @Option(names = "--family", paramLabel = "NAME", description = {
        "Judge by the input levels of a logic family (74LS, 74HC, 4000B), a chip (Z80), or a part's value (SN74LS32N)."})
    private String family;

    @Option(names = "--supply", paramLabel = "V", description = "The supply that the family runs from, as 4.5V.")
    private String supply;

    @Option(names = "--threshold", paramLabel = "V", description = "Judge by one voltage that the next stage needs, as 2.0V.")
    private String threshold;

    @Option(names = "--against", paramLabel = "CAPTURE", description = "Compare with a capture of the same net that is good.")
    private Path against;

    @Mixin
    private ReadAsOptions readAs = new ReadAsOptions();

    @Mixin
    private PhotoArguments photo = new PhotoArguments();

    @Option(names = "--json", paramLabel = "FILE", description = "Write the answer as JSON (- for standard output).")
    private String json;

    public WaveCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        Thresholds thresholds = thresholds();
        ImportOptions options = readAs.options();
        Imported imported = read(capture, options);
        Imported reference = against == null ? null : read(against, options);
        CaptureReport report;
        try {
            report = CaptureReport.of(imported, channel, thresholds, reference);
        } catch (IllegalArgumentException e) {
            throw Problem.usage(e.getMessage());
        }
        if (json != null) {
            JsonTarget.object(console(), json, out -> WaveJson.write(out, report));
        } else {
            WaveText.write(console().out(), report);
        }
        return ExitCode.DONE;
    }

    private Imported read(Path file, ImportOptions options) throws IOException {
        ReadAsOptions.checkFile(file);
        if (!PhotoArguments.isPhoto(head(file))) {
            if (file == capture) {
                photo.none(file);
            }
            return ReadAsOptions.read(file, options);
        }
        try {
            byte[] bytes = Files.readAllBytes(file);
            PhotoOptions said = photo.options(file, bytes);
            return PhotoReader.read(bytes, file == capture ? said : said.withCorners(null)).imported();
        } catch (CaptureException e) {
            throw Problem.input(file + ": " + e.getMessage(), e);
        }
    }

    private static byte[] head(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(16);
        }
    }

    private Thresholds thresholds() throws IOException {
        if (family != null && threshold != null) {
            throw Problem.usage("--family and --threshold do not go together; say one of them");
        }
        if (threshold != null) {
            return Thresholds.plain(OptionValue.of("--threshold", threshold, QuantityKind.VOLTAGE_DC));
        }
        if (family == null) {
            if (supply != null) {
                throw Problem.usage("--supply goes with --family; say which family");
            }
            return null;
        }
        return Thresholds.of(levels(supply == null ? Double.NaN : OptionValue.of("--supply", supply, QuantityKind.VOLTAGE_DC)));
    }

    private LogicLevels levels(double volts) throws IOException {
        try {
            return new ThresholdWords(LevelBook.standard(), PartBooks.book(console())).levels(family, volts);
        } catch (IllegalArgumentException e) {
            throw Problem.usage(e.getMessage());
        }
    }
}
