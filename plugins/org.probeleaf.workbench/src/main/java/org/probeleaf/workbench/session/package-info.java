// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * An open job as the window knows it: its sheets, its facts, what is selected. Files, recognition and graphs are
 * worked on in threads of their own; what comes out is handed to the display thread as immutable values, and the
 * {@link org.probeleaf.workbench.session.SessionListener}s are told there.
 */
package org.probeleaf.workbench.session;
