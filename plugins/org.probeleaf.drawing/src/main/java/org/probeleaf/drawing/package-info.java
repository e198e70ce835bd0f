// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * A sheet file and its pages: opened once, taken apart into primitives for the recognition, rendered to pixels for
 * the eye. All lengths are PDF points from the top left of the page as displayed.
 */
package org.probeleaf.drawing;
