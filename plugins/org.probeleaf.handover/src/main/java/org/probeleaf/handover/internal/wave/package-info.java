// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Sets the pages of waveforms. */
package org.probeleaf.handover.internal.wave;
