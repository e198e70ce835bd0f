// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * Where things lie on the screen, worked out without a widget. Three spaces meet here:
 *
 * <pre>
 *   page      points from the top left of one page
 *   document  points; all pages of a job laid out on one plane ({@link org.probeleaf.workbench.geometry.PageStack})
 *   screen    logical pixels from the top left of the canvas ({@link org.probeleaf.workbench.geometry.Viewport})
 * </pre>
 */
package org.probeleaf.workbench.geometry;
