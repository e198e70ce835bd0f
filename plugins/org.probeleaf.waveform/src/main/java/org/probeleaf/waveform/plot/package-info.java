// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * Plots of captures as plain shapes: lines and words with a role each. A window, a PDF or an SVG paints the same shapes,
 * so that a plot looks the same wherever it stands. Traces are told apart by their dashes as well as by their colours.
 */
package org.probeleaf.waveform.plot;
