// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** How a person names a place: a pin, a part, a net, a spot on a page. */
package org.probeleaf.schematic.place;
