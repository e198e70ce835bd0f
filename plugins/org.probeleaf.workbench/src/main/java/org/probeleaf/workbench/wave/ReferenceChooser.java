// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.probeleaf.job.mark.CaptureMark;

/** What a capture is compared with: others of the job, those at the same net first, or a file outside of it. */
final class ReferenceChooser {

    private static final String NOTHING = "compare with nothing";
    private static final String FILE = "from a file\u2026";

    private final Combo combo;
    private final Consumer<CaptureMark> chosen;
    private List<CaptureMark> offered = List.of();
    private CaptureMark reference;

    /**
     * @param chosen told what to compare with, or null for nothing
     * @param file   asked to read a file beside the job
     */
    ReferenceChooser(Composite parent, Consumer<CaptureMark> chosen, Consumer<Path> file) {
        this.chosen = chosen;
        combo = new Combo(parent, SWT.READ_ONLY);
        combo.setToolTipText("A capture of the same net on a board that works");
        combo.addListener(SWT.Selection, e -> {
            int at = combo.getSelectionIndex() - 1;
            if (at < 0) {
                choose(null);
            } else if (at < offered.size()) {
                choose(offered.get(at));
            } else {
                select();
                ask(file);
            }
        });
    }

    Combo control() {
        return combo;
    }

    private void choose(CaptureMark other) {
        reference = other;
        chosen.accept(other);
    }

    private void ask(Consumer<Path> file) {
        FileDialog dialog = new FileDialog(combo.getShell(), SWT.OPEN);
        dialog.setText("Compare with a capture");
        dialog.setFilterNames(new String[] {"Captures", "All files"});
        dialog.setFilterExtensions(new String[] {"*.csv;*.txt;*.tsv;*.dat;*.vcd;*.wav;*.CSV;*.TXT;*.VCD;*.WAV", "*"});
        String name = dialog.open();
        if (name != null) {
            file.accept(Path.of(name));
        }
    }

    /**
     * Offers captures.
     *
     * @param others  all but the one that is shown
     * @param sameNet whether one is at the net of the one that is shown
     * @param now     what is compared with, or null
     */
    void show(List<CaptureMark> others, Predicate<CaptureMark> sameNet, CaptureMark now) {
        List<CaptureMark> sorted = new ArrayList<>(others.stream().filter(sameNet).toList());
        int same = sorted.size();
        others.stream().filter(o -> !sorted.contains(o)).forEach(sorted::add);
        List<String> names = new ArrayList<>(List.of(NOTHING));
        for (int i = 0; i < sorted.size(); i++) {
            CaptureMark c = sorted.get(i);
            names.add(c.fileName() + (c.sha256().isEmpty() ? ", a file" : " at " + c.place().text())
                    + (i < same && !c.sha256().isEmpty() ? ", same net" : ""));
        }
        names.add(FILE);
        offered = sorted;
        reference = now;
        if (!names.equals(List.of(combo.getItems()))) {
            combo.setItems(names.toArray(String[]::new));
        }
        select();
    }

    private void select() {
        int at = reference == null ? 0 : offered.stream().map(CaptureMark::id).toList().indexOf(reference.id()) + 1;
        if (combo.getSelectionIndex() != at) {
            combo.select(at);
        }
    }
}
