// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Starts the assembled window as a person would, drives it with mouse and keyboard, and looks at the screen. */
package org.probeleaf.window;
