// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Captures out of files: delimited text of any layout, VCD, WAV; with what was assumed, in words. */
package org.probeleaf.waveform.format;
