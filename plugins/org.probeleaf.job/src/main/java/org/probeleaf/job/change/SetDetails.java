// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.mark.Marks;

/**
 * Writes the head of the job.
 *
 * @param details the new head
 * @param when    when
 */
public record SetDetails(JobDetails details, Instant when) implements Change {

    @Override
    public String words(Marks before) {
        return "details of the job";
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withDetails(details);
    }
}
