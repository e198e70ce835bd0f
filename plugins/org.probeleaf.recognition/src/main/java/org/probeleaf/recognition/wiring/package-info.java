// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * What is joined on one page: wires and leads become conductors by the rules of drawing (ends that meet, an end on a
 * line, a dot; a plain crossing is no joint), and where a conductor meets a body there is a pin.
 */
package org.probeleaf.recognition.wiring;
