// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * How a PDF page becomes primitives: {@link org.probeleaf.drawing.internal.PageExtractor} runs the content stream,
 * {@link org.probeleaf.drawing.internal.PathCollector} gathers and flattens outlines,
 * {@link org.probeleaf.drawing.internal.TextAssembler} joins glyphs into pieces of text.
 */
package org.probeleaf.drawing.internal;
