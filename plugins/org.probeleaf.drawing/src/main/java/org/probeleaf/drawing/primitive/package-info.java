// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What a page is made of: lines, filled shapes, pieces of text, pictures; all in displayed page coordinates. */
package org.probeleaf.drawing.primitive;
