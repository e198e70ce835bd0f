// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.time.Instant;
import java.time.ZoneId;

/**
 * Who marks a sheet up and when.
 *
 * @param author may be empty
 * @param when   the moment
 * @param zone   in which dates are written
 */
public record Signature(String author, Instant when, ZoneId zone) {
}
