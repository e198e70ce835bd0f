// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The workbench that is shipped with the command line: a folder with the script {@code launch}, called
 * {@code workbench} in the shipped folder or {@code probeleaf-workbench} beside it. It runs as a process of its own; the command line knows nothing of its inside.
 */
public final class Workbench {

    private final Console console;
    /** Its script, or null where there is none. */
    private final Path launch;

    private Workbench(Console console, Path launch) {
        this.console = console;
        this.launch = launch;
    }

    /** The workbench of the folder that the program runs from. */
    public static Workbench of(Console console) {
        String other = console.env().get("PROBELEAF_WORKBENCH");
        Path home = console.home();
        Stream<Path> folders = other != null ? Stream.of(Path.of(other))
                : home == null ? Stream.empty()
                : Stream.of(home.resolve("workbench"), home.resolveSibling("probeleaf-workbench"));
        return new Workbench(console, folders.map(f -> f.resolve("launch")).filter(Files::isRegularFile).findFirst()
                .orElse(null));
    }

    /** Whether a window can be opened: the workbench is there, and so is a display. */
    public boolean canOpen() {
        return launch != null && hasDisplay();
    }

    /**
     * Opens the window and waits until it is closed.
     *
     * @return the code that it ended with
     * @throws Problem where there is no workbench or no display
     */
    public int open(List<String> words) throws IOException, InterruptedException {
        if (launch == null) {
            throw Problem.other("the window is not here; put its folder probeleaf-workbench beside this one, or set"
                    + " PROBELEAF_WORKBENCH to the folder that holds its script \"launch\"", null);
        }
        if (!hasDisplay()) {
            throw Problem.other("there is no display to open the window on; log in to a desktop, or set DISPLAY", null);
        }
        List<String> command = new ArrayList<>(List.of("sh", launch.toString()));
        command.addAll(words);
        return new ProcessBuilder(command).inheritIO().start().waitFor();
    }

    private boolean hasDisplay() {
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        return system.startsWith("windows") || system.startsWith("mac")
                || !console.env().getOrDefault("DISPLAY", "").isEmpty()
                || !console.env().getOrDefault("WAYLAND_DISPLAY", "").isEmpty();
    }
}
