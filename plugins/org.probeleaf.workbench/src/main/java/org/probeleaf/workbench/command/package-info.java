// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The commands of the window. Each is one constant or class and one registration in plugin.xml. */
package org.probeleaf.workbench.command;
