// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * Diagnosis from first principles: a model says what sound components do, observations speak against some of them being
 * sound together (conflicts), and the least sets of components that meet every conflict are the diagnoses
 * (R. Reiter, "A theory of diagnosis from first principles", Artificial Intelligence 32, 1987; J. de Kleer and
 * B. C. Williams, "Diagnosing multiple faults", the same volume). Values are whole numbers, so that a model may be of
 * logic levels or of anything else that can be reckoned with.
 */
package org.probeleaf.diagnosis.consistency;
