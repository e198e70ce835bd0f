// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * What the text of a page says: which designator names which symbol, which number and name a pin bears, which labels,
 * supply symbols and off-sheet connectors name which conductor. Each text is used once; see
 * {@link org.probeleaf.recognition.name.TextRoles} for the order.
 */
package org.probeleaf.recognition.name;
