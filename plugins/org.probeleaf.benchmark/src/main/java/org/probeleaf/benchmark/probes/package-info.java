// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** How many probes it takes to find a fault in made networks of gates, with the true fault known. */
package org.probeleaf.benchmark.probes;
