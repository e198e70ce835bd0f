// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;

import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;

/** Where the job of a sheet lies. */
public final class JobFiles {

    /** Ending of a job file's name, with its dot. */
    public static final String ENDING = ".probeleaf";

    private JobFiles() {
    }

    /** Whether a file is a job by its name. */
    public static boolean isJob(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(ENDING);
    }

    /**
     * The job file for a sheet: beside it, or in the person's folder where that place cannot be written or is the
     * program's own (the example). A job that is
     * there already is taken where it holds this sheet; else a free name is found.
     *
     * @param sheet the sheet file
     * @param bytes its bytes
     */
    static Path forSheet(Path sheet, byte[] bytes) {
        Path folder = sheet.toAbsolutePath().getParent();
        if (!Files.isWritable(folder) || isOurs(folder)) {
            folder = Path.of(System.getProperty("user.home"), "Probeleaf");
        }
        String name = sheet.getFileName().toString().replaceFirst("\\.[^.]{1,5}$", "");
        String sha = sha256(bytes);
        Path file = folder.resolve(name + ENDING);
        for (int i = 2; Files.exists(file) && !holds(file, sha); i++) {
            file = folder.resolve(name + " " + i + ENDING);
        }
        return file;
    }

    /** Whether a folder is of the program itself, which an update replaces: no place for a person's work. */
    private static boolean isOurs(Path folder) {
        String home = System.getProperty("probeleaf.home");
        return home != null && folder.startsWith(Path.of(home).toAbsolutePath().normalize());
    }

    private static boolean holds(Path file, String sha) {
        try (Job job = Job.openToRead(file)) {
            return job.state().sheets().stream().anyMatch(s -> s.sha256().equals(sha));
        } catch (JobException e) {
            // Better a clear word on opening than a second job beside one that is merely in use or damaged.
            return e.problem() != JobException.Problem.NOT_A_JOB;
        }
    }

    /** Makes the folder of a file where it is missing. */
    static void makeFolder(Path file) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
