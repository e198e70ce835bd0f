// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * What a reading should be, and what is to be said of it: an {@code Expectation} is parsed from text
 * ({@code 5V±5%}, {@code 4.75..5.25}, {@code 74LS}) and judges a value, which gives a {@code Verdict} with its reason.
 */
package org.probeleaf.job.expectation;
