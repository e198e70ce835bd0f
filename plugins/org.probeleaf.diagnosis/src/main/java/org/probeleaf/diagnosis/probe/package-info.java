// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The next probe: which place, once looked at, leaves least to be told apart. */
package org.probeleaf.diagnosis.probe;
