// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.time.Instant;

import org.probeleaf.cli.io.Console;
import org.probeleaf.job.change.AddNote;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.schematic.place.Place;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code note}: pins a note. */
@Command(name = "note", description = "Pin a note to a place on a job's sheets.")
public final class NoteCommand extends ChangeVerb {

    @Parameters(index = "2", paramLabel = "TEXT", description = "The note.")
    private String text;

    public NoteCommand(Console console) {
        super(console);
    }

    @Override
    Change change(Place place, Anchor anchor) {
        return new AddNote(NoteMark.of(place, anchor, text, Instant.now()));
    }

    @Override
    void done(Change change) {
        NoteMark note = ((AddNote) change).note();
        say("Noted at " + note.place().text() + " on sheet " + note.page() + ".");
    }
}
