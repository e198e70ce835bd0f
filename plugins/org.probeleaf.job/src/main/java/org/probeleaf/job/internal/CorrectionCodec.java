// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Spot;
import org.probeleaf.schematic.geometry.Box;

/** Corrections as JSON objects. A new kind is one line in the register here. */
final class CorrectionCodec {

    /** One kind of correction. */
    private record Kind<C extends Correction>(String name, Class<C> type, Function<C, Body> write,
            Function<Body, C> read) {

        Body body(Correction correction) {
            return write.apply(type.cast(correction)).with("what", name);
        }
    }

    private static final Map<String, Kind<?>> BY_NAME = new LinkedHashMap<>();
    private static final Map<Class<?>, Kind<?>> BY_TYPE = new LinkedHashMap<>();

    static {
        register(new Kind<>("join", Correction.Join.class, c -> spots(c.spots()),
                b -> new Correction.Join(spots(b))));
        register(new Kind<>("split", Correction.Split.class, c -> spot(c.at()), b -> new Correction.Split(spot(b))));
        register(new Kind<>("detach", Correction.Detach.class, c -> spots(c.spots()),
                b -> new Correction.Detach(spots(b))));
        register(new Kind<>("junction", Correction.Junction.class, c -> spot(c.at()).with("joined", c.joined()),
                b -> new Correction.Junction(spot(b), b.flag("joined"))));
        register(new Kind<>("name", Correction.Name.class, c -> spot(c.at()).with("name", c.name()),
                b -> new Correction.Name(spot(b), b.text("name"))));
        register(new Kind<>("add-pin", Correction.AddPin.class, c -> spot(c.at()).with("ref", c.ref())
                .with("number", c.number()).with("name", c.name()),
                b -> new Correction.AddPin(spot(b), b.text("ref"), b.textOrNull("number"), b.textOrNull("name"))));
        register(new Kind<>("move-pin", Correction.MovePin.class, c -> spots(c.spots()),
                b -> new Correction.MovePin(spots(b).get(0), spots(b).get(1))));
        register(new Kind<>("edit-pin", Correction.EditPin.class, c -> spot(c.pin()).with("number", c.number())
                .with("name", c.name()),
                b -> new Correction.EditPin(spot(b), b.textOrNull("number"), b.textOrNull("name"))));
        register(new Kind<>("remove-pin", Correction.RemovePin.class, c -> spot(c.pin()),
                b -> new Correction.RemovePin(spot(b))));
        register(new Kind<>("add-part", Correction.AddPart.class, c -> box(c.page(), c.box()).with("ref", c.ref())
                .with("value", c.value()).with("unit", c.unit()),
                b -> new Correction.AddPart(b.whole("page"), box(b), b.text("ref"), b.textOrNull("value"),
                        b.textOrNull("unit"))));
        register(new Kind<>("edit-part", Correction.EditPart.class, c -> spot(c.part()).with("ref", c.ref())
                .with("value", c.value()),
                b -> new Correction.EditPart(spot(b), b.textOrNull("ref"), b.textOrNull("value"))));
        register(new Kind<>("remove-part", Correction.RemovePart.class, c -> spot(c.part()),
                b -> new Correction.RemovePart(spot(b))));
        register(new Kind<>("unit", Correction.AssignUnit.class, c -> spot(c.piece()).with("ref", c.ref())
                .with("unit", c.unit()),
                b -> new Correction.AssignUnit(spot(b), b.text("ref"), b.textOrNull("unit"))));
        register(new Kind<>("ignore", Correction.Ignore.class, c -> box(c.page(), c.box()),
                b -> new Correction.Ignore(b.whole("page"), box(b))));
        register(new Kind<>("confirm", Correction.Confirm.class, c -> spot(c.at()),
                b -> new Correction.Confirm(spot(b))));
    }

    private CorrectionCodec() {
    }

    private static void register(Kind<?> kind) {
        BY_NAME.put(kind.name(), kind);
        BY_TYPE.put(kind.type(), kind);
    }

    static Body body(KeptCorrection kept) {
        return BY_TYPE.get(kept.correction().getClass()).body(kept.correction()).with("id", kept.id())
                .with("when", kept.when());
    }

    static KeptCorrection read(Body b) {
        Kind<?> kind = BY_NAME.get(b.text("what"));
        if (kind == null) {
            throw new IllegalArgumentException("\"" + b.text("what") + "\" is no correction that is known");
        }
        return new KeptCorrection(b.text("id"), kind.read().apply(b), b.instant("when"));
    }

    private static Body spot(Spot s) {
        return Body.empty().with("place", s.place()).with("page", s.page()).with("at", s.at());
    }

    private static Spot spot(Body b) {
        return new Spot(b.place("place"), b.whole("page"), b.point("at"));
    }

    private static Body spots(List<Spot> spots) {
        return Body.empty().with("spots", spots.stream().map(s -> spot(s).fields()).toList());
    }

    private static List<Spot> spots(Body b) {
        return b.bodies("spots").stream().map(CorrectionCodec::spot).toList();
    }

    private static Body box(int page, Box box) {
        return Body.empty().with("page", page).with("box", List.of(box.x0(), box.y0(), box.x1(), box.y1()));
    }

    private static Box box(Body b) {
        List<Double> v = b.numbers("box", 4);
        return Box.of(v.get(0), v.get(1), v.get(2), v.get(3));
    }
}
