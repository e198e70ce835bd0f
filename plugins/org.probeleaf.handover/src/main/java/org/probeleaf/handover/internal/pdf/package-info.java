// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Annotations, layers and the saving of a PDF whose pages stay as they were. */
package org.probeleaf.handover.internal.pdf;
