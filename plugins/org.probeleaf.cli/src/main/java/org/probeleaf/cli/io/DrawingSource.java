// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import org.probeleaf.job.Boards;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobState;
import org.probeleaf.recognition.Progress;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Netlist;

/** Reads what a person may name as a drawing: a sheet, a job or a netlist document. */
public final class DrawingSource {

    /** The ending of job files. */
    public static final String JOB_ENDING = ".probeleaf";

    private final SheetReader sheets;

    public DrawingSource(SheetReader sheets) {
        this.sheets = sheets;
    }

    /**
     * Reads a drawing into a netlist.
     *
     * @param path     the drawing
     * @param pages    pages of a sheet; of the others the whole is read
     * @param password of a protected sheet, or null
     * @throws IOException where it cannot be read: a sheet, job or {@link Problem}
     */
    public Netlist read(Path path, PageRange pages, String password) throws IOException {
        return switch (kind(path)) {
            case JOB -> ofJob(path);
            case DOCUMENT -> ofDocument(path);
            case SHEET -> sheets.read(path, pages, password);
        };
    }

    /** What a file is by its name. */
    public enum Kind { SHEET, JOB, DOCUMENT }

    /** What a file is by its name; whatever is neither a job nor a document is taken for a sheet. */
    public static Kind kind(Path path) {
        String name = path.toString().toLowerCase(Locale.ROOT);
        return name.endsWith(JOB_ENDING) ? Kind.JOB : name.endsWith(".json") ? Kind.DOCUMENT : Kind.SHEET;
    }

    private Netlist ofJob(Path path) throws IOException {
        try (Job job = Job.openToRead(path)) {
            JobState state = job.state();
            Netlist netlist = state.onBench() != null ? state.onBench()
                    : Boards.of(job.recognise(sheets.book(), Progress.NONE), state.boards().kept()).thisBoard().netlist();
            return Labels.applied(netlist, state.labels());
        }
    }

    private static Netlist ofDocument(Path path) {
        if (!Files.exists(path)) {
            throw Problem.input(path + ": there is no such file; check the name", null);
        }
        if (Files.isDirectory(path)) {
            throw Problem.input(path + ": is a folder; name a file in it", null);
        }
        try (InputStream in = new BufferedInputStream(Files.newInputStream(path))) {
            return NetlistJson.read(in);
        } catch (IOException e) {
            throw Problem.input(path + ": " + e.getMessage() + "; write it again with probeleaf nets --json", e);
        }
    }
}
