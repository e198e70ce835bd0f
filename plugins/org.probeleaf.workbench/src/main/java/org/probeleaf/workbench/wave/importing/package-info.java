// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The dialog that shows how the file of a capture is understood, and lets a person put that right. */
package org.probeleaf.workbench.wave.importing;
