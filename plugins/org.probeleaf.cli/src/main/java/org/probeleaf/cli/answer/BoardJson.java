// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.IOException;
import java.util.List;

import org.probeleaf.job.Boards;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.BoardWords;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.trace.board.ChangeOutcome;

import com.fasterxml.jackson.core.JsonGenerator;

/** What was done to the board, as JSON. */
public final class BoardJson {

    private BoardJson() {
    }

    /** What has just been done, and what is to be put back. */
    public static void done(JsonGenerator out, List<KeptBoardChange> kept, List<ChangeOutcome> outcomes, Boards boards)
            throws IOException {
        out.writeArrayFieldStart("changes");
        for (int i = 0; i < kept.size(); i++) {
            out.writeStartObject();
            fields(out, kept.get(i));
            out.writeStringField("outcome", outcomes.get(i).text());
            out.writeEndObject();
        }
        out.writeEndArray();
        list(out, "open_changes", boards.open());
    }

    /** What was put back, what is to stay, and what is still to be put back. */
    public static void putBack(JsonGenerator out, List<KeptBoardChange> done, List<KeptBoardChange> stay,
            List<KeptBoardChange> open) throws IOException {
        list(out, "put_back", done);
        list(out, "to_stay", stay);
        list(out, "open_changes", open);
    }

    /** A list of changes. */
    public static void list(JsonGenerator out, String key, List<KeptBoardChange> all) throws IOException {
        out.writeArrayFieldStart(key);
        for (KeptBoardChange one : all) {
            out.writeStartObject();
            fields(out, one);
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private static void fields(JsonGenerator out, KeptBoardChange one) throws IOException {
        out.writeStringField("id", one.id());
        out.writeStringField("board", one.board() == Board.THIS ? "this" : "known-good");
        out.writeStringField("change", one.words());
        out.writeBooleanField("temporary", one.temporary());
        out.writeStringField("note", one.note());
        out.writeStringField("when", one.when().toString());
        out.writeStringField("put_back", one.putBack() == null ? null : one.putBack().toString());
        if (one.open()) {
            out.writeStringField("to_do", BoardWords.toPutBack(one.change()));
        }
    }
}
