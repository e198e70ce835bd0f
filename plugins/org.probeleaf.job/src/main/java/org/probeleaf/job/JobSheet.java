// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

/**
 * A sheet file in a job.
 *
 * @param index     0-based place among the job's sheet files
 * @param fileName  name of the file, without folders
 * @param sha256    of its bytes, lower-case hexadecimal
 * @param firstPage number of its first page in the job, 1-based; the pages of several files count on
 * @param pageCount how many pages it has
 */
public record JobSheet(int index, String fileName, String sha256, int firstPage, int pageCount) {

    /** Whether the given page of the job is in this file. */
    public boolean holds(int page) {
        return page >= firstPage && page < firstPage + pageCount;
    }
}
