// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.io.IOException;
import java.nio.file.Path;

import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartBookFolder;

/** The part book that the technician works with. */
public final class PartBooks {

    private PartBooks() {
    }

    /** The folder of the technician's own part book. */
    public static PartBookFolder folder(Console console) {
        return PartBookFolder.usual(console.env(), Path.of(System.getProperty("user.home")),
                System.getProperty("os.name"));
    }

    /**
     * The technician's own part book over the standard one.
     *
     * @throws Problem where a file of it is written wrongly
     */
    public static PartBook book(Console console) {
        try {
            return folder(console).book();
        } catch (IOException e) {
            throw Problem.input(e.getMessage(), e);
        }
    }
}
