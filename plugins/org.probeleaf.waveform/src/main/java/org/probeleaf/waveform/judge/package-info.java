// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What a technician would say of a signal: whether it lives, whether the next stage can read it, and why. */
package org.probeleaf.waveform.judge;
