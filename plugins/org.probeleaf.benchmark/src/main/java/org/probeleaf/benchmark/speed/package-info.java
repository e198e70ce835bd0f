// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** How fast sheets are read: beside a public tool, as sheets grow, and for whole sets. */
package org.probeleaf.benchmark.speed;
