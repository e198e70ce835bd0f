// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Readings held against true netlists: figures, the meaning of confidence, and pictures of what went wrong. */
package org.probeleaf.benchmark.score;
