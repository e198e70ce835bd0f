// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * Lettering that is drawn with strokes, or printed and turned into filled outlines: strokes that hang together are marks,
 * marks in a row are lines, and each letter
 * of a line is compared with an alphabet. What is read well on a page teaches the hand it is written in, with which all
 * is read a second time.
 */
package org.probeleaf.recognition.lettering;
