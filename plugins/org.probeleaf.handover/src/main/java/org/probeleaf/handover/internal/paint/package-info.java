// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** How marks look: colours, letters, signs, cards. Painted into the appearance streams of annotations. */
package org.probeleaf.handover.internal.paint;
