// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.time.Instant;
import java.util.List;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.job.BoardComparison;
import org.probeleaf.job.change.ChangeBoard;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.workbench.look.Look;

/** Drawing, this board and a known-good one side by side: only where they are not the same. */
public final class BoardsView extends SessionView {

    private PlainTable<BoardComparison.Row> table;
    private Foot foot;

    @Override
    protected void createContent(Composite parent) {
        Look look = new Look(parent);
        Head.column(parent);
        table = new PlainTable<>(parent, BoardComparison.Row.class, this::go);
        table.column("Part", 24, 70, BoardComparison.Row::what,
                r -> r.differsFromKnownGood() ? look.icon("suspects") : look.icon("boards"));
        table.column("Drawing", 24, 66, BoardComparison.Row::drawn, null);
        table.column("This board", 26, 72, BoardComparison.Row::thisBoard, null);
        table.column("Known-good", 26, 72, BoardComparison.Row::knownGood, null);
        table.hint("Parts that are not the same on the drawing, on this board and on a known-good board stand here. Note"
                + " what you see from the Board menu; the strip lets you say which board it is.");
        foot = new Foot(parent);
        table.viewer().addSelectionChangedListener(e -> selected(e.getSelection() instanceof IStructuredSelection s
                && s.getFirstElement() instanceof BoardComparison.Row r ? r : null));
    }

    private void selected(BoardComparison.Row row) {
        foot.show(row == null ? "" : row.what() + ": drawn " + row.drawn() + "; this board " + row.thisBoard()
                + "; known-good board " + row.knownGood() + ".");
        if (row != null) {
            go(row);
            List<BoardChange> here = row.part() == null ? List.of() : about(row.part());
            if (!here.isEmpty() && row.differsFromKnownGood() && session().filter(s -> !s.readOnly()).isPresent()) {
                foot.button("The known-good board is so too", "boards", () -> session().ifPresent(s ->
                        s.apply(new ChangeBoard(here.stream().map(c -> KeptBoardChange.of(Board.KNOWN_GOOD, c, false,
                                "", Instant.now())).toList()))));
            }
        }
    }

    /** What stands on this board about a part: fitted, not fitted, or of another value. */
    private List<BoardChange> about(String ref) {
        return facts().map(f -> f.state().boards().standing().stream().filter(k -> k.board() == Board.THIS
                && !k.temporary()).map(KeptBoardChange::change).filter(c -> c instanceof BoardChange.Remove r
                        && r.ref().equalsIgnoreCase(ref) || c instanceof BoardChange.Value v
                        && v.ref().equalsIgnoreCase(ref) || c instanceof BoardChange.Replace p
                        && p.ref().equalsIgnoreCase(ref) || c instanceof BoardChange.Fit t
                        && t.ref().equalsIgnoreCase(ref)).toList()).orElse(List.of());
    }

    private void go(BoardComparison.Row row) {
        if (row.part() != null) {
            BoardWalk.go(session().orElse(null), new Place.OfPart(row.part()));
        }
    }

    @Override
    protected void refresh() {
        table.show(facts().map(f -> BoardComparison.of(f.state().boards())).orElse(List.of()));
        foot.show("");
    }

    @Override
    public void setFocus() {
        table.focus();
    }
}
