// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The trace on a screen whose graticule is known.
 * <ol>
 * <li>{@code FlatScreen}: the picture seen straight on, so many pixels a division, without glare and without graticule</li>
 * <li>{@code ColourFinder}: which colour the trace has</li>
 * <li>{@code Strokes}: where in each column it may be; {@code StrokeChooser}: where it is</li>
 * <li>{@code ThinLine}: the line in the middle of a stroke as thick as the pen</li>
 * </ol>
 */
package org.probeleaf.photo.trace;
