// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Photographs as files: read with their orientation and within bounds, and taken apart into planes of colour. */
package org.probeleaf.photo.picture;
