// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import org.probeleaf.diagnosis.Finding;
import org.probeleaf.diagnosis.NextProbe;
import org.probeleaf.diagnosis.Observation;
import org.probeleaf.diagnosis.Suspect;

/** The answer of {@code suspects} for people. */
public final class SuspectsText {

    /** So many suspects are shown; the rest is counted. */
    private static final int SHOWN = 10;
    private static final int SETS_SHOWN = 5;

    private SuspectsText() {
    }

    /** What counted, the suspects, the sets of parts that explain all, the next probe, the notes. */
    public static void write(PrintStream out, Finding finding, List<Observation> readings) {
        counted(out, readings);
        if (!finding.suspects().isEmpty()) {
            out.println("Suspects");
            List<Suspect> shown = finding.suspects().subList(0, Math.min(SHOWN, finding.suspects().size()));
            int ref = shown.stream().mapToInt(s -> s.ref().length()).max().orElse(0);
            shown.forEach(s -> {
                out.println("  " + percent(s.weight()) + "  " + Words.padded(s.ref(), ref) + "  " + s.fault());
                Words.wrapped(out, " ".repeat(10 + ref), Arrays.asList(s.why().split(" ")));
            });
            double rest = finding.suspects().stream().skip(SHOWN).mapToDouble(Suspect::weight).sum();
            if (finding.suspects().size() > SHOWN) {
                out.println("  " + percent(rest) + "  " + Words.count(finding.suspects().size() - SHOWN, "other part"));
            }
        }
        together(out, finding);
        next(out, finding);
        finding.notes().forEach(n -> Words.wrapped(out, "", Arrays.asList(n.split(" "))));
    }

    private static void counted(PrintStream out, List<Observation> readings) {
        if (!readings.isEmpty()) {
            out.println("Of the job's readings count");
            readings.forEach(o -> out.println("  " + o.at().text() + " " + o.seen().word()));
        }
    }

    /** Diagnoses of several parts; those of one are the suspects themselves. */
    private static void together(PrintStream out, Finding finding) {
        List<List<String>> several = finding.diagnoses().stream().filter(d -> d.size() > 1).toList();
        boolean alone = several.size() < finding.diagnoses().size();
        if (!several.isEmpty() && !alone) {
            out.println("Together they explain all that was seen");
            several.stream().limit(SETS_SHOWN).forEach(d -> out.println("  " + String.join(" and ", d)));
            if (several.size() > SETS_SHOWN) {
                out.println("  or " + Words.count(several.size() - SETS_SHOWN, "other set"));
            }
        }
    }

    private static void next(PrintStream out, Finding finding) {
        NextProbe next = finding.next();
        if (next != null) {
            String net = next.net() == null ? "" : " (" + next.net().title() + ")";
            out.println("Probe next");
            out.println("  " + next.at().text() + net);
            Words.wrapped(out, "    ", Arrays.asList((next.why() + "; about "
                    + String.format(Locale.ROOT, "%.1f", next.expectedProbes()) + " probes in all").split(" ")));
        } else if (!finding.suspects().isEmpty()) {
            out.println("Probing tells no more.");
        }
    }

    private static String percent(double weight) {
        return weight < 0.005 ? " <1 %" : String.format(Locale.ROOT, "%3.0f %%", weight * 100);
    }
}
