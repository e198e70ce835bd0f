// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.correction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Display;
import org.probeleaf.job.mark.Board;
import org.probeleaf.workbench.correction.Task.Aim;
import org.probeleaf.workbench.session.Deed;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.session.Trial;

/**
 * Leads through a correction of a sheet, or a change of the board: takes what is pointed at, shows what would come of
 * it, hands it to the job.
 * Used on the display thread.
 */
public final class Correcting {

    /** How long the pointer rests before it is found out what a click would do, in milliseconds. */
    private static final int REST = 150;

    private final SheetSession session;
    private final Display display;
    private final List<Runnable> listeners = new ArrayList<>();
    private final List<Selection> picks = new ArrayList<>();
    private Task task;
    private List<String> texts = List.of();
    private Selection pointer;
    private Trial trial;
    private String word = "";
    private boolean typed;
    private boolean forNow;
    private Board board = Board.THIS;
    private int asked;

    public Correcting(SheetSession session, Display display) {
        this.session = session;
        this.display = display;
    }

    /** Tells {@code listener} of every change of what is in hand. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }

    /** Whether the job can be corrected now. */
    public boolean possible() {
        return !session.readOnly() && session.facts().filter(Facts::recognised).isPresent();
    }

    /**
     * Takes a task in hand.
     *
     * @param first what is pointed at already, or null
     */
    public void start(Task next, Selection first) {
        if (!possible()) {
            return;
        }
        clear();
        task = next;
        texts = next.fields().stream().map(f -> "").toList();
        forNow = next.temporary();
        board = Board.THIS;
        tell();
        if (first != null) {
            pick(first);
        }
    }

    /** Lets the task go; nothing is corrected. */
    public void cancel() {
        clear();
        tell();
    }

    private void clear() {
        task = null;
        picks.clear();
        pointer = null;
        trial = null;
        word = "";
        typed = false;
        asked++;
    }

    /** Whether a correction has been begun and not yet made or given up. */
    public boolean active() {
        return task != null;
    }

    /** The task in hand. */
    public Optional<Task> task() {
        return Optional.ofNullable(task);
    }

    /** What has been pointed at so far. */
    public List<Selection> picks() {
        return List.copyOf(picks);
    }

    /** What is to be pointed at next; empty where all is and something is to be typed. */
    public Optional<Aim> aim() {
        return task == null || picks.size() >= task.steps().size() ? Optional.empty()
                : Optional.of(task.steps().get(picks.size()).aim());
    }

    /** Where the pointer is, in a step that takes a place. */
    public Optional<Selection> pointer() {
        return Optional.ofNullable(pointer);
    }

    /** What would come of it. */
    public Optional<Trial> trial() {
        return Optional.ofNullable(trial);
    }

    /** What to do now. */
    String prompt() {
        return task == null ? "" : picks.size() < task.steps().size() ? task.steps().get(picks.size()).prompt()
                : "Type what it says.";
    }

    /** A word on what was done last, or on what would come of it. */
    String word() {
        // What stands in the fields at first says what was read; that it is so already need not be said.
        boolean untouched = aim().isEmpty() && !typed;
        return !word.isEmpty() ? word : trial == null || untouched ? "" : trial.words();
    }

    /** Whether what would come of it is no correction, or what was pointed at does not fit. */
    boolean warns() {
        return !word.isEmpty() || trial != null && !trial.works();
    }

    /** Whether what was pointed at last is not what the task asks for; the strip says so. */
    public boolean misses() {
        return task != null && !word.isEmpty();
    }

    /** Points at a place. */
    public void pick(Selection at) {
        Aim aim = aim().orElse(null);
        if (aim == null) {
            return;
        }
        Selection fits = fitting(aim, at);
        if (fits == null) {
            word = aim.missing();
            tell();
            return;
        }
        word = "";
        picks.add(fits);
        if (picks.size() == 1) {
            texts = task.fields().stream().map(f -> f.firstText(fits)).toList();
        }
        if (picks.size() == task.steps().size() && task.fields().isEmpty()) {
            commit();
        } else {
            trial = null;
            tell();
            tryOut(List.copyOf(picks));
        }
    }

    /** A place as far as a task can begin with it, or null. */
    public Selection fitting(Task next, Selection at) {
        return at == null ? null : fitting(next.steps().get(0).aim(), at);
    }

    /** What is pointed at as far as it fits, or null. */
    private Selection fitting(Aim aim, Selection at) {
        return switch (aim) {
            case NET -> at.net() != null || Task.isPin(at) ? at : null;
            case WIRE -> at.net() != null ? at : null;
            case PIN -> Task.isPin(at) ? at : null;
            case PART -> at.part() != null && at.pin() == null ? at : session.facts()
                    .flatMap(f -> f.partAt(at.page(), at.at())).map(p -> Task.part(p, at))
                    .orElse(at.part() != null ? Task.part(at.part(), at) : null);
            case SPOT, CORNER -> at;
        };
    }

    /** The pointer moves over a place; after a rest it is found out what a click would do. */
    public void point(Selection at) {
        Aim aim = aim().orElse(null);
        if (aim == null) {
            return;
        }
        pointer = at;
        int mine = ++asked;
        if (trial != null) {
            trial = null;
            tell();
        } else if (aim == Aim.CORNER) {
            tell();
        }
        if (picks.size() + 1 == task.steps().size() && task.fields().isEmpty() && fitting(aim, at) != null) {
            display.timerExec(REST, () -> {
                if (mine == asked && task != null) {
                    List<Selection> all = new ArrayList<>(picks);
                    all.add(fitting(aim, at));
                    tryOut(all);
                }
            });
        }
    }

    /** What is typed. */
    void type(List<String> now) {
        texts = List.copyOf(now);
        typed = true;
        word = "";
        tryOut(List.copyOf(picks));
    }

    /** Whether what is done to the board is to be put back. */
    boolean forNow() {
        return forNow;
    }

    void setForNow(boolean now) {
        forNow = now;
    }

    /** Which board it is done to; nothing is done to a known-good one for now only. */
    void setBoard(Board which) {
        board = which;
        forNow = which == Board.THIS && task != null && task.temporary();
    }

    /** What stands in the fields at first. */
    List<String> texts() {
        return texts;
    }

    private void tryOut(List<Selection> all) {
        if (task == null || all.size() < task.steps().size()) {
            return;
        }
        int mine = ++asked;
        try {
            session.tryOut(task.make(all, texts, board, forNow), t -> {
                if (mine == asked) {
                    trial = t;
                    tell();
                }
            });
        } catch (IllegalArgumentException e) {
            trial = null;
            tell();
        }
    }

    /** Hands the correction to the job, where all is pointed at and typed. */
    public void commit() {
        if (task == null || picks.size() < task.steps().size()) {
            return;
        }
        try {
            Deed deed = task.make(List.copyOf(picks), texts, board, forNow);
            Selection first = picks.get(0);
            clear();
            session.select(session.facts().map(f -> f.at(first.page(), first.at(), 3)).orElse(null));
            session.perform(deed);
            tell();
        } catch (IllegalArgumentException e) {
            word = e.getMessage();
            // Two corners on different sheets cannot be put right by typing.
            if (task.fields().isEmpty()) {
                picks.remove(picks.size() - 1);
            }
            tell();
        }
    }
}
