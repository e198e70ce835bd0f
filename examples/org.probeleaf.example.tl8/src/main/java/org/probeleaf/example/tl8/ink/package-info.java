// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Ink on paper: lines, curves, discs and lettering in points from the top left, and the PDF made of them. */
package org.probeleaf.example.tl8.ink;
