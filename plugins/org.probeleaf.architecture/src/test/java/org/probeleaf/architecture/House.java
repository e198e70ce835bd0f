// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.architecture;

import java.nio.file.Path;

/** Where the checkout and what was built in it lie. */
final class House {

    private House() {
    }

    static Path root() {
        return Path.of(System.getProperty("probeleaf.root"));
    }

    /** The folder of the command line. */
    static Path core() {
        return root().resolve("features/org.probeleaf.feature.core/target/probeleaf");
    }

    /** The folder of the window. */
    static Path window() {
        return root().resolve("features/org.probeleaf.feature.workbench/target/probeleaf-workbench");
    }
}
