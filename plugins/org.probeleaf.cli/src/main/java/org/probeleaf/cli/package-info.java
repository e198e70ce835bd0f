// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The command line: every capability from a shell. {@link org.probeleaf.cli.Main} finds the verb, runs it and turns
 * what goes wrong into one line and an exit code. The verbs lie in {@code verb}, what they read and write with in
 * {@code io}, their answers in {@code answer}.
 */
package org.probeleaf.cli;
