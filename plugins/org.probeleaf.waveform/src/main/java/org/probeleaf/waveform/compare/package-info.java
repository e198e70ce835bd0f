// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** A capture against one of the same net on a board that works. */
package org.probeleaf.waveform.compare;
