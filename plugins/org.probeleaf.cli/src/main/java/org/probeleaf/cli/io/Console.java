// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Map;

/**
 * What a verb speaks to.
 *
 * @param out      results; nothing else
 * @param err      progress and errors
 * @param terminal whether a person watches {@code err}; progress is shown to nobody else
 * @param home     the shipped folder, or null where the program does not run from one
 * @param env      environment of the process
 */
public record Console(PrintStream out, PrintStream err, boolean terminal, Path home, Map<String, String> env) {

    /** Shows how far it is, over the last such line. */
    public void progress(String text) {
        if (terminal) {
            err.print("\r\u001b[K" + text);
            err.flush();
        }
    }

    /** Clears the line of {@link #progress}. */
    public void progressDone() {
        if (terminal) {
            err.print("\r\u001b[K");
            err.flush();
        }
    }
}
