// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.time.Instant;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.job.Boards;
import org.probeleaf.job.change.KeepBoardChange;
import org.probeleaf.job.change.PutBack;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.board.BoardState;
import org.probeleaf.trace.board.BothSides;
import org.probeleaf.trace.board.ChangeOutcome;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/** Everything that is done to the board and stands, with what became of it; of a lifted pin both sides to measure. */
public final class BoardChangesView extends SessionView {

    private record Row(KeptBoardChange kept, ChangeOutcome outcome) {
    }

    private PlainTable<Row> table;
    private Foot foot;

    @Override
    protected void createContent(Composite parent) {
        Look look = new Look(parent);
        Head.column(parent);
        table = new PlainTable<>(parent, Row.class, r -> BoardWalk.go(session().orElse(null), r.kept().change()));
        table.column("On the board", 50, 140, r -> PutBackView.capital(r.kept().words()), r -> look.icon("board"));
        table.column("For", 16, 66, r -> r.kept().temporary() ? "now" : "good", null);
        table.column("Note", 24, 50, r -> r.outcome() != null && !r.outcome().done() ? r.outcome().text()
                : r.kept().note(), r -> r.outcome() != null && !r.outcome().done() ? look.icon("doubts") : null);
        table.colours(r -> r.outcome() != null && !r.outcome().done() ? look.colour(Palette.VERMILLION) : null);
        table.hint("What is otherwise on the board than on the drawing stands here: right-click a pin, a part or a"
                + " wire, or choose from the Board menu.");
        foot = new Foot(parent);
        table.viewer().addSelectionChangedListener(e -> selected(
                e.getSelection() instanceof IStructuredSelection s && s.getFirstElement() instanceof Row r ? r : null));
    }

    private void selected(Row row) {
        if (row == null) {
            foot.show("");
            return;
        }
        KeptBoardChange kept = row.kept();
        BothSides sides = kept.change() instanceof BoardChange.Lift lift ? facts()
                .flatMap(f -> f.board() == null ? Optional.empty() : f.board().bothSides(lift.pin()))
                .orElse(null) : null;
        foot.show(sides == null ? PutBackView.capital(row.outcome() == null ? kept.words() : row.outcome().text()) + "."
                : PutBackView.capital(kept.words()) + ". Measure again on both sides: if the pin alone is still wrong,"
                        + " its part is; if the pad is, something else on the net.");
        BoardWalk.go(session().orElse(null), kept.change());
        if (session().filter(s -> !s.readOnly()).isEmpty()) {
            return;
        }
        if (sides != null) {
            measure(sides.onPin(), "At the pin");
            if (sides.onPad() != null) {
                measure(sides.onPad(), "At the pad");
            }
        }
        foot.button("Put back", "put-back", () -> session().ifPresent(s ->
                s.apply(new PutBack(kept.id(), Instant.now()))));
        if (kept.temporary()) {
            foot.button("It stays", "confirm", () -> session().ifPresent(s ->
                    s.apply(new KeepBoardChange(kept.id(), Instant.now()))));
        }
    }

    /** A button that opens the entry of a reading there. */
    private void measure(Place place, String title) {
        foot.button(title, "reading", () -> BoardWalk.measure(getSite().getPage(), session().orElse(null), place));
    }

    @Override
    protected void refresh() {
        List<Row> rows = new ArrayList<>();
        facts().ifPresent(f -> {
            Boards boards = f.state().boards();
            BoardState state = boards.state(Board.THIS);
            Map<BoardChange, ChangeOutcome> outcomes = new IdentityHashMap<>();
            if (state != null) {
                state.outcomes().forEach(o -> outcomes.put(o.change(), o));
            }
            boards.standing().stream().filter(k -> k.board() == Board.THIS)
                    .forEach(k -> rows.add(new Row(k, outcomes.get(k.change()))));
        });
        table.show(rows);
        foot.show("");
    }

    @Override
    public void setFocus() {
        table.focus();
    }
}
