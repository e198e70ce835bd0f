// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

/** Hears of changes in a job. */
@FunctionalInterface
public interface JobListener {

    /**
     * The job has changed; what changed is safe on disk. Called on the thread that made the change.
     *
     * @param state the job after the change
     */
    void jobChanged(JobState state);
}
