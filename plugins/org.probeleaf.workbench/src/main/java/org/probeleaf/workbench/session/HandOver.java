// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.probeleaf.handover.MarkedSheet;
import org.probeleaf.handover.MarkedSheetOptions;
import org.probeleaf.handover.WaveformSheet;
import org.probeleaf.handover.wave.WaveReader;
import org.probeleaf.job.Job;
import org.probeleaf.job.mark.KeptBoardChange;

/** Writes what the customer gets beside the job. */
final class HandOver {

    private HandOver() {
    }

    /** Writes the marked-up sheets, and says where they are or what stands in the way. */
    static Trouble write(Job job, boolean acceptOpen) {
        List<KeptBoardChange> open = job.state().boards().open();
        if (!open.isEmpty() && !acceptOpen) {
            return new Trouble(Trouble.Kind.OPEN_CHANGES, "Not handed over: " + open.stream()
                    .map(KeptBoardChange::words).collect(Collectors.joining(", ")) + " for now. Put "
                    + (open.size() == 1 ? "it" : "them") + " back on the board and note it in Put-back.");
        }
        String name = job.file().getFileName().toString().replaceFirst("\\.[^.]+$", "");
        Path folder = job.file().resolveSibling(name + "-handover");
        try {
            MarkedSheetOptions options = MarkedSheetOptions.of(job.state().details().technician(), Instant.now())
                    .withWaves(WaveReader.standard().all(job));
            List<Path> files = new ArrayList<>(MarkedSheet.write(job, options, folder));
            WaveformSheet.write(job.state().details(), options, folder).ifPresent(files::add);
            return new Trouble(Trouble.Kind.NOTICE, "Handed over: " + files.stream().map(f -> f.getFileName().toString())
                    .collect(Collectors.joining(", ")) + " in " + folder + ".");
        } catch (IOException e) {
            return new Trouble(Trouble.Kind.NOTICE, "Not handed over: " + e.getMessage()
                    + ". Make room or rights in " + folder.getParent() + " and try again.");
        }
    }
}
