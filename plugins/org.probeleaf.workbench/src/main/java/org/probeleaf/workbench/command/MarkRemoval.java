// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.command;

import java.time.Instant;

import org.probeleaf.job.JobState;
import org.probeleaf.job.change.RemoveCapture;
import org.probeleaf.job.change.RemoveLabel;
import org.probeleaf.job.change.RemoveNote;
import org.probeleaf.job.change.RemoveReading;
import org.probeleaf.workbench.sheet.SheetEditor;

/** Takes the selected mark away. */
final class MarkRemoval {

    private MarkRemoval() {
    }

    static void remove(SheetEditor editor) {
        String id = editor.session().selectedMark().orElseThrow();
        JobState state = editor.session().facts().orElseThrow().state();
        Instant now = Instant.now();
        if (state.labels().stream().anyMatch(m -> m.id().equals(id))) {
            editor.session().apply(new RemoveLabel(id, now));
        } else if (state.notes().stream().anyMatch(m -> m.id().equals(id))) {
            editor.session().apply(new RemoveNote(id, now));
        } else if (state.readings().stream().anyMatch(m -> m.id().equals(id))) {
            editor.session().apply(new RemoveReading(id, now));
        } else if (state.captures().stream().anyMatch(m -> m.id().equals(id))) {
            editor.session().apply(new RemoveCapture(id, now));
        }
    }
}
