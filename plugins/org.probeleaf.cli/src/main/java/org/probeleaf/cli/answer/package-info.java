// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The answers of the verbs, as text for people and as JSON for programs. */
package org.probeleaf.cli.answer;
