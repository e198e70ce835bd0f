// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.details;

import java.util.List;

/**
 * The head of a job. Texts are as typed, empty where nothing was said, never null.
 *
 * @param unit       what is on the bench ({@code "Tide logger TL-8, serial 0421"})
 * @param customer   whose it is
 * @param complaint  what the customer says is wrong
 * @param technician who works on it; stands as author in what is handed over
 * @param hazards    what can hurt, in the order of {@link Hazard}, each once
 */
public record JobDetails(String unit, String customer, String complaint, String technician, List<Hazard> hazards) {

    public JobDetails {
        hazards = hazards.stream().distinct().sorted().toList();
    }

    /** A head that says nothing. */
    public static JobDetails blank() {
        return new JobDetails("", "", "", "", List.of());
    }

    public JobDetails withUnit(String text) {
        return new JobDetails(text, customer, complaint, technician, hazards);
    }

    public JobDetails withCustomer(String text) {
        return new JobDetails(unit, text, complaint, technician, hazards);
    }

    public JobDetails withComplaint(String text) {
        return new JobDetails(unit, customer, text, technician, hazards);
    }

    public JobDetails withTechnician(String text) {
        return new JobDetails(unit, customer, complaint, text, hazards);
    }

    public JobDetails withHazards(List<Hazard> list) {
        return new JobDetails(unit, customer, complaint, technician, list);
    }
}
