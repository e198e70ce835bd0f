// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The file under the job: {@code JobStore} speaks to SQLite, {@code Migrations} brings older files up to date,
 * {@code WriterLock} keeps a second writer out, {@code ChangeCodec} turns changes into JSON and back.
 */
package org.probeleaf.job.internal;
