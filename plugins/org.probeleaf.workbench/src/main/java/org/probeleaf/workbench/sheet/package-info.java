// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The sheet editor. Painting goes from the paper up: paper, bands of nets, found text, ink, pin marks, cards. The ink
 * comes as tiles with a transparent ground, rendered off the display thread, so that whatever is painted before them
 * lies under the ink.
 */
package org.probeleaf.workbench.sheet;
