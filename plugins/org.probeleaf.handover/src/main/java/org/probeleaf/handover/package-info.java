// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What is handed over at the end of a job: the marked-up sheet. */
package org.probeleaf.handover;
