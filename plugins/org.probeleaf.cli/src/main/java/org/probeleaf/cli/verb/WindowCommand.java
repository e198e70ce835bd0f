// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.cli.io.Workbench;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code window}: opens the workbench. */
@Command(name = "window", description = "Open the workbench, on a sheet or a job where one is named.")
public final class WindowCommand extends Verb {

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "A sheet (PDF, image) or a job (*.probeleaf).")
    private Path file;

    public WindowCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException, InterruptedException {
        List<String> words = new ArrayList<>();
        if (file != null) {
            if (!Files.isReadable(file) || Files.isDirectory(file)) {
                throw Problem.input(file + ": is no file that can be read; check the name", null);
            }
            words.add(file.toAbsolutePath().toString());
        }
        int code = Workbench.of(console()).open(words);
        if (code != 0) {
            throw Problem.other("the window ended with code " + code + "; what it printed says why", null);
        }
        return ExitCode.DONE;
    }
}
