// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The file under the job: {@code Database} opens SQLite as the job needs it, {@code Schema} brings older files up to
 * date, {@code JobStore} reads and writes, {@code ChangeLog} is the changes replayed, {@code JobChecker} looks a file
 * over, {@code WriterLock} keeps a second writer out, {@code ChangeCodec} turns changes into JSON and back.
 */
package org.probeleaf.job.internal;
