// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Waveforms in the window: plots that are moved, drawn apart and measured with cursors. */
package org.probeleaf.workbench.wave;
