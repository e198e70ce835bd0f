// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What the packages of this bundle share and nobody else may use. */
package org.probeleaf.trace.internal;
