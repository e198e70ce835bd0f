// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * Correcting what was read, on the sheet. A {@code Task} is one kind of correction: what to point at, what to type. The
 * {@code Correcting} of a sheet leads a person through the task in hand, shows beforehand what would come of it, and
 * hands the correction to the job.
 */
package org.probeleaf.workbench.correction;
