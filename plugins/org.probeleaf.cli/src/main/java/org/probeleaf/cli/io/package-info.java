// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What the verbs share: the console, drawings of every kind read into a netlist, where answers are written to. */
package org.probeleaf.cli.io;
