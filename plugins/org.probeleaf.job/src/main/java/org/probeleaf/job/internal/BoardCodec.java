// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

import org.probeleaf.job.change.ChangeBoard;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.place.Place;

/** What was done to a board as JSON objects. A new kind is one line in the register here. */
final class BoardCodec {

    /** One kind of change of a board. */
    private record Kind<C extends BoardChange>(String name, Class<C> type, Function<C, Body> write,
            Function<Body, C> read) {

        Body body(BoardChange change) {
            return write.apply(type.cast(change)).with("what", name);
        }
    }

    private static final Map<String, Kind<?>> BY_NAME = new LinkedHashMap<>();
    private static final Map<Class<?>, Kind<?>> BY_TYPE = new LinkedHashMap<>();

    static {
        register(new Kind<>("lift", BoardChange.Lift.class, c -> Body.empty().with("pin", c.pin()),
                b -> new BoardChange.Lift(pin(b))));
        register(new Kind<>("remove", BoardChange.Remove.class, c -> ref(c.ref()),
                b -> new BoardChange.Remove(b.text("ref"))));
        register(new Kind<>("fit", BoardChange.Fit.class, c -> ref(c.ref()).with("value", c.value())
                .with("at", c.at().stream().map(Place::text).toList()),
                b -> new BoardChange.Fit(b.text("ref"), b.textOrNull("value"),
                        b.texts("at").stream().map(Place::parse).toList())));
        register(new Kind<>("replace", BoardChange.Replace.class, c -> ref(c.ref()).with("value", c.value()),
                b -> new BoardChange.Replace(b.text("ref"), b.textOrNull("value"))));
        register(new Kind<>("link", BoardChange.Link.class, c -> Body.empty().with("from", c.from())
                .with("to", c.to()), b -> new BoardChange.Link(b.place("from"), b.place("to"))));
        register(new Kind<>("cut", BoardChange.Cut.class, c -> Body.empty().with("at", c.at()),
                b -> new BoardChange.Cut(b.place("at"))));
        register(new Kind<>("value", BoardChange.Value.class, c -> ref(c.ref()).with("value", c.value()),
                b -> new BoardChange.Value(b.text("ref"), b.text("value"))));
    }

    private BoardCodec() {
    }

    private static void register(Kind<?> kind) {
        BY_NAME.put(kind.name(), kind);
        BY_TYPE.put(kind.type(), kind);
    }

    static Body body(ChangeBoard change) {
        return Body.empty().with("done", change.kept().stream().map(k -> kept(k).fields()).toList());
    }

    static ChangeBoard read(Body body) {
        return new ChangeBoard(body.bodies("done").stream().map(BoardCodec::kept).toList());
    }

    private static Body kept(KeptBoardChange k) {
        return BY_TYPE.get(k.change().getClass()).body(k.change()).with("id", k.id())
                .with("board", k.board().name().toLowerCase(Locale.ROOT)).with("temporary", k.temporary())
                .with("note", k.note()).with("when", k.when());
    }

    private static KeptBoardChange kept(Body b) {
        Kind<?> kind = BY_NAME.get(b.text("what"));
        if (kind == null) {
            throw new IllegalArgumentException("\"" + b.text("what") + "\" is nothing known that is done to a board");
        }
        return new KeptBoardChange(b.text("id"), Board.valueOf(b.text("board").toUpperCase(Locale.ROOT)),
                kind.read().apply(b), b.flag("temporary"), b.text("note"), b.instant("when"), null);
    }

    private static Place.OfPin pin(Body b) {
        if (b.place("pin") instanceof Place.OfPin pin) {
            return pin;
        }
        throw new IllegalArgumentException(b.text("pin") + " is no pin");
    }

    private static Body ref(String ref) {
        return Body.empty().with("ref", ref);
    }
}
