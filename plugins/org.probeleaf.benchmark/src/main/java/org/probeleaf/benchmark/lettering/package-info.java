// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** How well printed letters are told by their outlines, and the alphabet that is made of open fonts for it. */
package org.probeleaf.benchmark.lettering;
