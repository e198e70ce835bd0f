// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The verbs of the command line, one class each. */
package org.probeleaf.cli.verb;
