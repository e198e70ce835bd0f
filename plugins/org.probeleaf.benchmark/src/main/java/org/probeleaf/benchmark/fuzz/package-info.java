// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Damaged and hostile PDFs, made from good ones, and what becomes of them. */
package org.probeleaf.benchmark.fuzz;
