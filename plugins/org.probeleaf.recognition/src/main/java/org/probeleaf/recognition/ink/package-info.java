// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * What is drawn on a page, made ready: the page frame is set aside,
 * lines are cut into straight segments with a style, junction dots are found, the sheet's own pin pitch is measured,
 * and each line style is given a role.
 */
package org.probeleaf.recognition.ink;
