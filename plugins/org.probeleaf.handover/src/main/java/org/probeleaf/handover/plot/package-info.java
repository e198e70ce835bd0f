// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Plots of waveforms as vectors on a page of a PDF. */
package org.probeleaf.handover.plot;
