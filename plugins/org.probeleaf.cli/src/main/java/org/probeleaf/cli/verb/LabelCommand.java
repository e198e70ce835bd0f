// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.time.Instant;

import org.probeleaf.cli.io.Console;
import org.probeleaf.job.change.AddLabel;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.schematic.place.Place;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code label}: overlays a net label. */
@Command(name = "label", description = {"Overlay a net label of your own on a job's sheets. The net can then be named"
        + " by it, and it stands on the marked-up sheet."})
public final class LabelCommand extends ChangeVerb {

    @Parameters(index = "2", paramLabel = "TEXT", description = "The name.")
    private String text;

    public LabelCommand(Console console) {
        super(console);
    }

    @Override
    Change change(Place place, Anchor anchor) {
        return new AddLabel(LabelMark.of(place, anchor, text, Instant.now()));
    }

    @Override
    void done(Change change) {
        LabelMark label = ((AddLabel) change).label();
        say("Labelled " + label.place().text() + " \"" + label.text() + "\" on sheet " + label.page() + ".");
    }
}
