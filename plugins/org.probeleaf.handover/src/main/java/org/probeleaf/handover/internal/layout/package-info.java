// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * Where cards, tags and the legend go on a page. Pure geometry over an {@code InkMap}, in points from the top left of
 * the page as displayed.
 */
package org.probeleaf.handover.internal.layout;
