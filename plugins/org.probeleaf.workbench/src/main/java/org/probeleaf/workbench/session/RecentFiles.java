// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

/**
 * The files used last for one purpose, the latest first, kept from one run to the next.
 *
 * @param key  of the purpose
 * @param most how many are kept
 */
public record RecentFiles(String key, int most) {

    /** Sheets and jobs that were opened. */
    public static final RecentFiles OPENED = new RecentFiles("recent", 8);
    /** Captures that were pinned. */
    public static final RecentFiles PINNED = new RecentFiles("captures", 10);
    private static final String NODE = "org.probeleaf.workbench";

    /** The files, whether they are still there or not. */
    public List<Path> list() {
        String stored = InstanceScope.INSTANCE.getNode(NODE).get(key, "");
        return stored.isEmpty() ? List.of() : stored.lines().map(Path::of).toList();
    }

    /** Puts a file first. */
    public void add(Path file) {
        List<Path> files = new ArrayList<>(list());
        files.remove(file);
        files.add(0, file);
        Preferences node = InstanceScope.INSTANCE.getNode(NODE);
        node.put(key, String.join("\n", files.stream().limit(most).map(Path::toString).toList()));
        try {
            node.flush();
        } catch (BackingStoreException e) {
            return; // the list is a convenience; it is tried again with the next file
        }
    }
}
