// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.probeleaf.cli.io.Problem;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.waveform.format.CaptureException;
import org.probeleaf.waveform.format.CaptureReader;
import org.probeleaf.waveform.format.ImportOptions;
import org.probeleaf.waveform.format.Imported;

import picocli.CommandLine.Option;

/** The options that say how a capture is to be read, for each verb that reads one. */
final class ReadAsOptions {

    @Option(names = "--interval", paramLabel = "T", description = "Distance of samples, as 2us, where the file does not tell.")
    private String interval;

    @Option(names = "--scale", paramLabel = "V", description = {
        "What one unit of the file is in volts; of a sound file, its full scale."})
    private String scale;

    @Option(names = "--delimiter", paramLabel = "C", description = {
        "Between the columns of a text: a character, tab or space."})
    private String delimiter;

    @Option(names = "--decimal", paramLabel = "C", description = "The decimal sign of a text, . or ,")
    private String decimal;

    @Option(names = "--first-row", paramLabel = "N", description = "The first row of data in a text, from 1.")
    private Integer firstRow;

    @Option(names = "--time-column", paramLabel = "N", description = "Which column is the time, from 1; 0 for none.")
    private Integer timeColumn;

    @Option(names = "--name", paramLabel = "NAME", description = "Name of a channel; once for each, in their order.")
    private List<String> names = List.of();

    /** What was said; refused with a usage error where it makes no sense. */
    ImportOptions options() {
        ImportOptions options = ImportOptions.none().withNames(names);
        if (interval != null) {
            double seconds = OptionValue.of("--interval", interval, QuantityKind.TIME);
            if (!(seconds > 0)) {
                throw Problem.usage("--interval: the distance of samples is a time above zero, as 2us");
            }
            options = options.withInterval(seconds);
        }
        if (scale != null) {
            options = options.withScale(OptionValue.of("--scale", scale, QuantityKind.VOLTAGE_DC));
        }
        if (delimiter != null) {
            String d = delimiter.equals("tab") ? "\t" : delimiter.equals("space") ? " " : delimiter;
            if (d.length() != 1) {
                throw Problem.usage("--delimiter: one character, tab or space is expected");
            }
            options = options.withDelimiter(d.charAt(0));
        }
        if (decimal != null) {
            if (!decimal.equals(".") && !decimal.equals(",")) {
                throw Problem.usage("--decimal: . or , is expected");
            }
            options = options.withDecimal(decimal.charAt(0));
        }
        if (firstRow != null) {
            if (firstRow < 1) {
                throw Problem.usage("--first-row: rows are counted from 1");
            }
            options = options.withFirstRow(firstRow);
        }
        if (timeColumn != null && timeColumn < 0) {
            throw Problem.usage("--time-column: columns are counted from 1; 0 says that none is the time");
        }
        return timeColumn == null ? options : options.withTimeColumn(timeColumn);
    }

    /** Refuses what is no file. */
    static void checkFile(Path file) {
        if (!Files.isRegularFile(file)) {
            throw Problem.input(file + (Files.isDirectory(file) ? ": is a folder; name a file in it"
                    : ": there is no such file; check the name"), null);
        }
    }

    /** Reads a capture; what cannot be read is one line that names the file. */
    static Imported read(Path file, ImportOptions options) throws IOException {
        checkFile(file);
        try {
            return CaptureReader.read(file, options);
        } catch (CaptureException e) {
            throw Problem.input(file + ": " + e.getMessage(), e);
        } catch (OutOfMemoryError e) {
            throw Problem.input(file + ": is too large for the memory there is; cut out the part that matters", e);
        }
    }
}
