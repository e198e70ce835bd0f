// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.List;
import java.util.Map;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.wiring.Contact;

/**
 * What a page's texts say.
 *
 * @param designators designator text of each body that has one, by id of the body
 * @param values      value text of each body that has one, by id of the body
 * @param numbers     printed numbers of pins
 * @param names       printed names of pins
 * @param tags        names of conductors
 */
public record PageNames(Map<Integer, Text> designators, Map<Integer, String> values, Map<Contact, String> numbers,
        Map<Contact, String> names, List<Tag> tags) {
}
