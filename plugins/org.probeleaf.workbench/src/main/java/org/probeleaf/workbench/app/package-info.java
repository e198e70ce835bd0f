// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The application: its start, its window, its perspectives. */
package org.probeleaf.workbench.app;
