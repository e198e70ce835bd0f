// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

import java.util.List;
import java.util.stream.Collectors;

import org.probeleaf.benchmark.score.Judgement.NetVerdict;
import org.probeleaf.benchmark.score.ReadPins.ReadPin;
import org.probeleaf.benchmark.score.Truth.TrueNet;

/** The nets that were not read exactly, in words. */
final class WrongNets {

    private WrongNets() {
    }

    static String text(Judgement judgement) {
        StringBuilder text = new StringBuilder();
        for (NetVerdict v : judgement.verdicts()) {
            if (v.exact()) {
                continue;
            }
            text.append(v.net().name()).append(" (").append(v.net().pins().size()).append(" pins), read as ")
                    .append(v.main() == null ? "nothing" : v.main()).append('\n');
            line(text, "  on another net: ", v.away().stream().map(p -> label(p) + " on " + p.net()).toList());
            line(text, "  not read:       ", v.unread().stream()
                    .map(p -> p.key().ref() + "." + p.key().key() + (p.name() == null ? "" : " " + p.name())).toList());
            TrueNet owner = judgement.owner(v.main());
            if (owner != null && owner != v.net()) {
                text.append("  read as one with: ").append(owner.name()).append('\n');
            } else {
                line(text, "  no such pin:     ", judgement.foreign(v.main()).stream().map(WrongNets::label).toList());
            }
        }
        return text.toString();
    }

    /** Part and pin as read, with its place. */
    static String label(ReadPin pin) {
        return pin.ref() + "." + pin.pin().label();
    }

    private static void line(StringBuilder text, String head, List<String> pins) {
        if (!pins.isEmpty()) {
            text.append(head).append(pins.stream().collect(Collectors.joining(", "))).append('\n');
        }
    }
}
