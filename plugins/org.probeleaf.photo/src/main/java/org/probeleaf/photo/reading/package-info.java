// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** A photograph as a capture: what a person says of it, how that is kept as a line of text, and what comes out. */
package org.probeleaf.photo.reading;
