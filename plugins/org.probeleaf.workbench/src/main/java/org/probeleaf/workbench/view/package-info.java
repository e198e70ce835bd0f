// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The views beside the sheet. Each shows the job in front and holds nothing of its own. */
package org.probeleaf.workbench.view;
