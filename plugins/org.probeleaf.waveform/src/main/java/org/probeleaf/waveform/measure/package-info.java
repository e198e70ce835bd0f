// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Figures of a waveform in the terms of IEEE Std 181 (IEC 60469), each with its uncertainty or the reason why there is none. */
package org.probeleaf.waveform.measure;
