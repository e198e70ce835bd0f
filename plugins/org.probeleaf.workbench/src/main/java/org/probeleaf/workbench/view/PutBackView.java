// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.job.change.KeepBoardChange;
import org.probeleaf.job.change.PutBack;
import org.probeleaf.job.mark.BoardWords;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.workbench.look.Look;

/** What was done to the board for now and has to be put back before the unit leaves. */
public final class PutBackView extends SessionView {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMM HH:mm")
            .withZone(ZoneId.systemDefault());

    private PlainTable<KeptBoardChange> table;
    private Head head;
    private Foot foot;

    @Override
    protected void createContent(Composite parent) {
        Look look = new Look(parent);
        Head.column(parent);
        head = new Head(parent, look);
        table = new PlainTable<>(parent, KeptBoardChange.class, k -> BoardWalk.go(session().orElse(null), k.change()));
        table.column("To do", 60, 140, k -> capital(BoardWords.toPutBack(k.change())), k -> look.icon("put-back"));
        table.column("Since", 20, 84, k -> TIME.format(k.when()), null);
        table.column("Note", 20, 50, KeptBoardChange::note, null);
        table.hint("Pins lifted, parts taken out, links and cuts made for now stand here until they are put back."
                + " Hand-over asks for them.");
        foot = new Foot(parent);
        table.viewer().addSelectionChangedListener(e -> selected(
                e.getSelection() instanceof IStructuredSelection s && s.getFirstElement() instanceof KeptBoardChange k
                        ? k : null));
        table.viewer().getTable().addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.DEL && table.viewer().getSelection() instanceof IStructuredSelection s
                    && s.getFirstElement() instanceof KeptBoardChange k) {
                putBack(k);
            }
        });
    }

    private void selected(KeptBoardChange kept) {
        foot.show(kept == null ? "" : capital(kept.words()) + ", for now.");
        if (kept != null) {
            BoardWalk.go(session().orElse(null), kept.change());
            if (session().filter(s -> !s.readOnly()).isPresent()) {
                foot.button("It is put back", "put-back", () -> putBack(kept));
                foot.button("It stays", "confirm", () -> session().ifPresent(s ->
                        s.apply(new KeepBoardChange(kept.id(), Instant.now()))));
            }
        }
    }

    private void putBack(KeptBoardChange kept) {
        session().filter(s -> !s.readOnly()).ifPresent(s -> s.apply(new PutBack(kept.id(), Instant.now())));
    }

    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    @Override
    protected void refresh() {
        List<KeptBoardChange> open = facts().map(f -> f.state().boards().open()).orElse(List.of());
        table.show(open);
        setPartName(open.isEmpty() ? "Put-back" : "Put-back (" + open.size() + ")");
        head.show(open.isEmpty() ? "Nothing to put back" : open.size() + " to put back", open.isEmpty()
                ? "The board is free of what was done for now." : "Before the unit leaves:");
        foot.show("");
    }

    @Override
    public void setFocus() {
        table.focus();
    }
}
