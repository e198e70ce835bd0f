// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Paints the shapes of a plot on the screen, in a view or on a card. */
package org.probeleaf.workbench.plot;
