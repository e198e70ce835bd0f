// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What a person sees before a sheet is open, and how one is opened. */
package org.probeleaf.workbench.start;
