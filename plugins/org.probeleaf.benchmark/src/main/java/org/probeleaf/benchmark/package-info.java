// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The program that measures: how well sheets are read, how fast, and what breaks it. */
package org.probeleaf.benchmark;
