// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What can go wrong with a part, and how readily: kinds of fault and their prior weights. */
package org.probeleaf.diagnosis.fault;
