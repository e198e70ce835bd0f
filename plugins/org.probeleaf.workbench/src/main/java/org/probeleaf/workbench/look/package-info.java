// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Colours, icons and fonts of the window, one family, each resource tied to the widget that uses it. */
package org.probeleaf.workbench.look;
