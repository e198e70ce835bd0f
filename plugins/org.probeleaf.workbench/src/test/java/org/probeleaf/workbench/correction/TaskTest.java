// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.correction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.probeleaf.job.mark.Board;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.workbench.session.Deed;
import org.probeleaf.workbench.session.Selection;

class TaskTest {

    private static final Pin PIN = Pin.drawn("21", "/RD", null, 1, new Point(30, 40), null);
    private static final Part PART = new Part("IC4", "Z80A", List.of(new PartUnit(null, 1, new Box(0, 0, 20, 60))),
            List.of(PIN));

    private static Selection place(int page) {
        return new Selection(page, PIN.at(), Selection.pin(PART, PIN, null).place(), null, PART, PIN);
    }

    @ParameterizedTest
    @EnumSource(Task.class)
    void make_fromItsStepsAndFields_isADeed(Task task) {
        List<Selection> picks = task.steps().stream().map(s -> place(1)).toList();
        List<String> texts = task.fields().stream().map(f -> f.firstText(place(1))).map(t -> t.isEmpty() ? "X1" : t)
                .toList();
        Deed deed = task.make(picks, texts, Board.THIS, true);
        if (deed instanceof Deed.OnReading reading) {
            assertEquals(1, reading.correction().spots().get(0).page());
            assertEquals(PIN.at(), reading.correction().spots().get(0).at());
        } else {
            assertTrue(((Deed.OnBoard) deed).temporary());
        }
        assertEquals(task.onBoard(), deed instanceof Deed.OnBoard);
        assertNotNull(TaskTest.class.getResource("/icons/" + task.icon() + ".svg"));
    }

    /** All that the job can keep can be said on the sheet. */
    @Test
    void tasks_together_makeEveryKindOfCorrectionAndOfChange() {
        Set<Class<?>> made = new HashSet<>();
        for (Task task : Task.values()) {
            Deed deed = task.make(task.steps().stream().map(s -> place(1)).toList(),
                    task.fields().stream().map(f -> "X1").toList(), Board.THIS, false);
            made.add(deed instanceof Deed.OnReading r ? r.correction().getClass()
                    : ((Deed.OnBoard) deed).change().getClass());
        }
        Set<Class<?>> all = new HashSet<>(Set.of(Correction.class.getPermittedSubclasses()));
        all.addAll(Set.of(BoardChange.class.getPermittedSubclasses()));
        assertEquals(all, made);
    }

    @Test
    void make_liftOfOneOfTwoUnnumberedPins_countsIt() {
        Pin a = Pin.drawn(null, null, null, 1, new Point(0, 0), "N1");
        Pin b = Pin.drawn(null, null, null, 1, new Point(0, 9), "N2");
        Part r = new Part("R3", "4k7", List.of(new PartUnit(null, 1, new Box(0, 2, 2, 7))), List.of(a, b));
        Deed deed = Task.LIFT.make(List.of(Selection.pin(r, b, null)), List.of(), Board.THIS, true);
        assertEquals(new BoardChange.Lift(new Place.OfPin("R3", "2")), ((Deed.OnBoard) deed).change());
    }

    @Test
    void make_cornersOnTwoSheets_saysSo() {
        String why = assertThrows(IllegalArgumentException.class,
                () -> Task.IGNORE.make(List.of(place(1), place(2)), List.of(), Board.THIS, false)).getMessage();
        assertTrue(why.contains("different sheets"), why);
    }

    @ParameterizedTest
    @ValueSource(strings = {"open-crossing", "nameless-symbol", "unattached-label", "open-end",
        "two-supplies", "unknown-mark", "pin-without-number", "something-else"})
    void remedies_ofAnyDoubt_endWithRightAsRead(String code) {
        List<Remedies.Remedy> all = Remedies.of(new Doubt(code, 1, new Point(1, 2), ""));
        assertEquals(Task.CONFIRM, all.get(all.size() - 1).task());
        assertTrue(all.size() > 2);
    }

    @Test
    void remedies_ofACrossing_areJunctionOrNone() {
        assertEquals(List.of(Task.JUNCTION, Task.NO_JUNCTION, Task.CONFIRM), Remedies.of(
                new Doubt("open-crossing", 1, new Point(1, 2), "")).stream().map(Remedies.Remedy::task).toList());
        assertFalse(Remedies.of(new Doubt("no-designators", 1, null, "")).isEmpty());
    }
}
