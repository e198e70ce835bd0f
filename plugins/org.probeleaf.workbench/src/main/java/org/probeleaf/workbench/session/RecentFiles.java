// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

/** The files opened last, the latest first. */
public final class RecentFiles {

    private static final String NODE = "org.probeleaf.workbench";
    private static final String KEY = "recent";
    private static final int MOST = 8;

    private RecentFiles() {
    }

    /** The files, whether they are still there or not. */
    public static List<Path> list() {
        String stored = InstanceScope.INSTANCE.getNode(NODE).get(KEY, "");
        return stored.isEmpty() ? List.of() : stored.lines().map(Path::of).toList();
    }

    /** Puts a file first. */
    public static void add(Path file) {
        List<Path> files = new ArrayList<>(list());
        files.remove(file);
        files.add(0, file);
        Preferences node = InstanceScope.INSTANCE.getNode(NODE);
        node.put(KEY, String.join("\n", files.stream().limit(MOST).map(Path::toString).toList()));
        try {
            node.flush();
        } catch (BackingStoreException e) {
            return; // the list is a convenience; it is tried again with the next file
        }
    }
}
