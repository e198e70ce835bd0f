// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.util.List;

import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.measure.Si;

/** What a capture holds, in a line. */
final class ImportSummary {

    private static final int NAMED = 6;

    private ImportSummary() {
    }

    static String of(Capture capture) {
        StringBuilder words = new StringBuilder();
        List<String> names = capture.names();
        int n = names.size();
        words.append(n == 1 ? "1 trace: " : n + " traces: ").append(String.join(", ", names.subList(0, Math.min(n, NAMED))))
                .append(n > NAMED ? " \u2026" : "");
        if (!capture.channels().isEmpty()) {
            Channel first = capture.channels().get(0);
            words.append("; ").append(first.size() == 1 ? "1 sample" : String.format("%,d samples", first.size())
                    .replace(',', '\u202f'));
            if (first.size() > 1) {
                words.append(" in ").append(Si.text(first.duration(), "s"));
            }
        } else if (!capture.digital().isEmpty()) {
            words.append("; ").append(Si.text(capture.digital().get(0).end(), "s"));
        }
        return words.append('.').toString();
    }
}
