// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.diagnosis.Finding;
import org.probeleaf.diagnosis.PossibleFault;
import org.probeleaf.diagnosis.Suspect;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.session.SuspectFinder;

/**
 * The parts that may be to blame, the likeliest first, with the reasons, and the probe that tells most, to be answered
 * here: what is entered there changes all of it at once.
 */
public final class SuspectsView extends SessionView {

    private static final int MOST_FAULTS = 4;
    private static final int FEW = 4;

    private Head head;
    private PlainTable<Suspect> table;
    private Foot foot;
    private NextProbePane next;
    private Finding shown;

    @Override
    protected void createContent(Composite parent) {
        Look look = new Look(parent);
        Head.column(parent);
        head = new Head(parent, look);
        table = new PlainTable<>(parent, Suspect.class, s -> go(s));
        table.column("Suspect", 22, 66, Suspect::ref, s -> look.icon("suspects"));
        table.column("Share", 14, 50, s -> percent(s.weight()), null);
        table.column("Likeliest fault", 32, 90, Suspect::fault, null);
        table.column("Why", 50, 100, Suspect::why, null);
        table.hint("Read something that is wrong (R on a pin, then a value or the word bad): the parts that may be to"
                + " blame stand here, and where to probe next.");
        foot = new Foot(parent);
        next = new NextProbePane(parent, this::session, this::facts);
        Action weights = new Action("How readily parts fail\u2026", Look.descriptor("other-value")) {
            @Override
            public void run() {
                new WeightsDialog(getSite().getShell()).open();
            }
        };
        getViewSite().getActionBars().getToolBarManager().add(weights);
        getViewSite().getActionBars().getMenuManager().add(weights);
        table.viewer().addSelectionChangedListener(e -> chosen(
                e.getSelection() instanceof IStructuredSelection s && s.getFirstElement() instanceof Suspect one ? one
                        : null));
    }

    static String percent(double share) {
        return share > 0 && share < 0.005 ? "< 1 %" : String.format(Locale.ROOT, "%.0f %%", share * 100);
    }

    private void chosen(Suspect suspect) {
        if (suspect == null) {
            foot.show("");
            return;
        }
        String others = suspect.faults().stream().limit(MOST_FAULTS).map(SuspectsView::words)
                .collect(Collectors.joining(", "));
        foot.show(suspect.ref() + " " + suspect.why() + ". " + PutBackView.capital(others)
                + (suspect.faults().size() > MOST_FAULTS ? " and others." : "."));
        go(suspect);
    }

    private static String words(PossibleFault fault) {
        return fault.fault() + " (" + percent(fault.weight()) + ")";
    }

    private void go(Suspect suspect) {
        SheetSession session = session().orElse(null);
        boolean there = suspect.pin() != null
                && BoardWalk.go(session, new Place.OfPin(suspect.ref(), suspect.pin()));
        if (!there) {
            BoardWalk.go(session, new Place.OfPart(suspect.ref()));
        }
    }

    @Override
    protected void refresh() {
        Optional<SuspectFinder> finder = session().map(SheetSession::suspects);
        Finding finding = finder.flatMap(SuspectFinder::finding).orElse(null);
        if (finding != shown || finding == null) {
            shown = finding;
            table.show(finding == null ? List.of() : finding.suspects());
            foot.show("");
        }
        boolean wrong = finding != null && !finding.suspects().isEmpty();
        head.show(wrong ? count(finding.suspects().size()) : "No suspects", wrong ? story(finding)
                : finding == null ? "" : String.join(" ", finding.notes()));
        next.show(finding == null ? null : finding.next(), wrong);
    }

    private static String count(int n) {
        return n == 1 ? "One suspect" : n + " suspects";
    }

    private static String story(Finding finding) {
        String explained = finding.diagnoses().isEmpty() || finding.diagnoses().size() > FEW ? ""
                : "What was read is explained by " + finding.diagnoses().stream().map(d -> String.join(" with ", d))
                        .collect(Collectors.joining(", or ")) + ". ";
        return explained + String.join(" ", finding.notes());
    }

    @Override
    public void suspectsChanged() {
        refresh();
    }

    @Override
    public void setFocus() {
        if (!next.focus()) {
            table.focus();
        }
    }
}
