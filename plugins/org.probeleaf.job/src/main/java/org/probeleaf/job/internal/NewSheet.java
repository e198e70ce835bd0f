// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

/**
 * A sheet file on its way into a job.
 *
 * @param fileName  without folders
 * @param bytes     as they came
 * @param pageCount how many pages it has
 * @param password  that opens it, or null
 */
public record NewSheet(String fileName, byte[] bytes, int pageCount, String password) {
}
