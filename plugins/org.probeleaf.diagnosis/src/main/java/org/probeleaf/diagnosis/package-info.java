// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * Which part is to blame, and where to probe next. {@link org.probeleaf.diagnosis.Diagnosis} takes the board as it is,
 * the part book and the weights of faults; given what was seen at places, it answers with a
 * {@link org.probeleaf.diagnosis.Finding}. The steps: the netlist becomes a circuit of nodes and cells
 * ({@code circuit}); what is seen is held against what the circuit would show with each possible fault
 * ({@code simulation}); where functions are known, conflicts and minimal diagnoses follow from logic alone
 * ({@code consistency}); the next probe is the one that leaves least to be told apart ({@code probe}).
 */
package org.probeleaf.diagnosis;
