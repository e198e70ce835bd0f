// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.correction;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Outcome;
import org.probeleaf.schematic.netlist.Doubt;

/** What may answer a doubt. */
public final class Remedies {

    private Remedies() {
    }

    /**
     * A task that may answer a doubt.
     *
     * @param task  the task
     * @param there whether the place of the doubt is what is to be pointed at first
     */
    public record Remedy(Task task, boolean there) {
    }

    /** What may answer a doubt, the likeliest first. */
    public static List<Remedy> of(Doubt doubt) {
        List<Remedy> all = new ArrayList<>();
        String code = doubt.code();
        if (doubt.at() == null) {
            all.add(new Remedy(Task.ADD_PART, false));
            all.add(new Remedy(Task.IGNORE, false));
            return all;
        }
        if (says(code, "crossing", "junction", "joint", "tee", "dot")) {
            all.add(new Remedy(Task.JUNCTION, true));
            all.add(new Remedy(Task.NO_JUNCTION, true));
        } else if (says(code, "symbol", "part", "designator", "unit", "body")) {
            all.add(new Remedy(Task.ADD_PART, false));
            all.add(new Remedy(Task.EDIT_PART, true));
            all.add(new Remedy(Task.IGNORE, false));
        } else if (says(code, "pin", "contact", "lead")) {
            all.add(new Remedy(Task.EDIT_PIN, true));
            all.add(new Remedy(Task.ADD_PIN, true));
            all.add(new Remedy(Task.MOVE_PIN, false));
        } else if (says(code, "supplies", "short")) {
            all.add(new Remedy(Task.NO_JUNCTION, false));
            all.add(new Remedy(Task.SPLIT, false));
            all.add(new Remedy(Task.DETACH, false));
        } else if (says(code, "open-end", "gap")) {
            all.add(new Remedy(Task.JOIN, true));
            all.add(new Remedy(Task.ADD_PIN, true));
            all.add(new Remedy(Task.IGNORE, false));
        } else if (says(code, "mark", "letter")) {
            all.add(new Remedy(Task.EDIT_PART, false));
            all.add(new Remedy(Task.EDIT_PIN, false));
            all.add(new Remedy(Task.NAME, false));
        } else if (says(code, "label", "name", "bus", "text", "sheet")) {
            all.add(new Remedy(Task.NAME, false));
            all.add(new Remedy(Task.JOIN, false));
            all.add(new Remedy(Task.IGNORE, false));
        } else {
            all.add(new Remedy(Task.JOIN, false));
            all.add(new Remedy(Task.SPLIT, false));
            all.add(new Remedy(Task.IGNORE, false));
        }
        all.add(new Remedy(Task.CONFIRM, true));
        return all;
    }

    private static boolean says(String code, String... words) {
        return List.of(words).stream().anyMatch(code::contains);
    }

    /** Whether a doubt is about a correction that does not hold. */
    public static boolean isAbout(Doubt doubt, Correction correction, Outcome outcome) {
        return outcome != null && !outcome.holds() && doubt.code().startsWith("correction-")
                && doubt.text().contains("\u201c" + correction.words() + "\u201d");
    }
}
