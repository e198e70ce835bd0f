// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

/** Which way a signal is followed. */
public enum Flow {
    /** To where it goes. */
    DOWNSTREAM,
    /** To where it comes from. */
    UPSTREAM
}
