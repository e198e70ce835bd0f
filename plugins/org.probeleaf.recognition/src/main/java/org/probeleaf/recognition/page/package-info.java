// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** One page read by itself, and all pages put together to a netlist. */
package org.probeleaf.recognition.page;
