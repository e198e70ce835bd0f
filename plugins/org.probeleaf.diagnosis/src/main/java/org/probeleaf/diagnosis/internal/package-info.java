// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** How a finding is put together. */
package org.probeleaf.diagnosis.internal;
