// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Builds the runnable folder of the window from the jars that Maven has put into it; used at build time only. */
package org.probeleaf.feature.workbench;
