// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.judge;

import java.util.List;

/**
 * What is said of a signal, and why.
 *
 * @param verdict    in one word
 * @param findings   everything that was found, the verdict first; what is worth a look but does no harm yet too
 * @param reasons    one sentence each, the reason of the verdict first
 * @param lowMargin  by how much its lower level is below what is taken for low, in volts; negative where it is above; NaN
 *                   where there is none or it was not judged
 * @param highMargin by how much its upper level is above what is taken for high, in volts; NaN as before
 * @param toggles    whether the next stage sees both states; null where it was not judged
 */
public record Judgement(Verdict verdict, List<Verdict> findings, List<String> reasons, double lowMargin, double highMargin,
        Boolean toggles) {

    public Judgement {
        findings = List.copyOf(findings);
        reasons = List.copyOf(reasons);
    }
}
