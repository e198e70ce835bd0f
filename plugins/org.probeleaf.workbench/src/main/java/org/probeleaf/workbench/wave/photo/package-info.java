// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The dialog that makes a capture of a photograph: corners by hand, the scale, the trace's colour, and what comes of it. */
package org.probeleaf.workbench.wave.photo;
