// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.feature.workbench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarFile;

/**
 * A jar that is an OSGi bundle.
 *
 * @param name    its symbolic name
 * @param version its version
 * @param file    name of the jar, without folders
 */
record BundleJar(String name, String version, String file) {

    /** Reads a jar's manifest; empty where the jar is no bundle. */
    static Optional<BundleJar> of(Path jar) throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            if (file.getManifest() == null) {
                return Optional.empty();
            }
            Attributes main = file.getManifest().getMainAttributes();
            String name = main.getValue("Bundle-SymbolicName");
            if (name == null) {
                return Optional.empty();
            }
            String version = main.getValue("Bundle-Version");
            return Optional.of(new BundleJar(name.split(";")[0].strip(), version == null ? "0.0.0" : version.strip(),
                    jar.getFileName().toString()));
        }
    }
}
