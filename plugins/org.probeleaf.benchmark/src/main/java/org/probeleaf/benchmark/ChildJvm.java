// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A second Java process with this program in it. */
public final class ChildJvm {

    private ChildJvm() {
    }

    /**
     * Starts one; its standard error goes to ours.
     *
     * @param options for Java, as {@code -Xmx512m}
     * @param args    the command line of this program
     */
    public static Process start(List<String> options, List<String> args) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-Djava.awt.headless=true", "-cp", System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(args);
        return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }
}
