// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Composite video: its rates, its levels, and whether a display would lock to it. */
package org.probeleaf.waveform.video;
