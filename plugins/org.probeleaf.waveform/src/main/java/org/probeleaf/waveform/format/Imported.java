// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import org.probeleaf.waveform.capture.Capture;

/**
 * A capture out of a file.
 *
 * @param capture what it holds
 * @param notes   what was assumed in reading it
 */
public record Imported(Capture capture, ImportNotes notes) {
}
