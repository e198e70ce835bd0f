// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.command;

import java.util.function.Consumer;
import java.util.function.Predicate;

import org.probeleaf.workbench.session.RouteWalk;
import org.probeleaf.workbench.sheet.EntryKind;
import org.probeleaf.workbench.sheet.SheetEditor;

/** What can be done to the sheet in front. Plugin.xml names each after the colon of the handler's class. */
enum SheetAction {
    FIT_PAGE(e -> e.canvas().fitPage()),
    FIT_WIDTH(e -> e.canvas().fitWidth()),
    ZOOM_IN(e -> e.canvas().zoom(Math.sqrt(2))),
    ZOOM_OUT(e -> e.canvas().zoom(Math.sqrt(0.5))),
    NEXT_SHEET(e -> e.canvas().showPage(e.canvas().currentPage() + 1)),
    PREVIOUS_SHEET(e -> e.canvas().showPage(e.canvas().currentPage() - 1)),
    BACK(e -> e.canvas().back()),
    SINGLE(e -> e.canvas().setSingle(!e.canvas().single())),
    FIND(SheetEditor::find),
    KEYS(SheetEditor::toggleKeys),
    LEAVE(SheetEditor::escape),
    NEXT_PIN(e -> PinWalk.step(e.session(), 1)),
    PREVIOUS_PIN(e -> PinWalk.step(e.session(), -1)),
    FURTHER(e -> e.session().routes().follow(e.session().routes().following().wider())),
    NEXT_STEP(e -> RouteWalk.step(e.session(), 1)),
    PREVIOUS_STEP(e -> RouteWalk.step(e.session(), -1)),
    NAME(e -> e.enter(EntryKind.NAME), e -> writable(e) && e.session().selectedNet().isPresent()),
    NOTE(e -> e.enter(EntryKind.NOTE), SheetAction::writable),
    READING(e -> e.enter(EntryKind.READING), SheetAction::writable),
    CAPTURE(CapturePin::ask, SheetAction::writable),
    TAKE(e -> e.session().selection().ifPresent(e.correcting()::pick), e -> e.correcting().active()),
    REMOVE(MarkRemoval::remove, e -> e.session().selectedMark().isPresent() && !e.session().readOnly()),
    HAND_OVER(e -> e.session().handOver(false), e -> e.session().facts().isPresent()),
    READ_AGAIN(e -> e.session().recognise(), e -> e.session().facts().isPresent() && !e.session().recognising());

    private final Consumer<SheetEditor> action;
    private final Predicate<SheetEditor> enabled;

    SheetAction(Consumer<SheetEditor> action) {
        this(action, e -> true);
    }

    SheetAction(Consumer<SheetEditor> action, Predicate<SheetEditor> enabled) {
        this.action = action;
        this.enabled = enabled;
    }

    private static boolean writable(SheetEditor e) {
        return e.session().facts().isPresent() && !e.session().readOnly() && e.session().selection().isPresent();
    }

    void run(SheetEditor editor) {
        action.accept(editor);
    }

    boolean enabledFor(SheetEditor editor) {
        return enabled.test(editor);
    }
}
