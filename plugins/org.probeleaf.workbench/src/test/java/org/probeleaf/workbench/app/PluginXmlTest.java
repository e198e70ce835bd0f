// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.app;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Plugin.xml against what it names. */
class PluginXmlTest {

    private static Document plugin;

    @BeforeAll
    static void read() throws Exception {
        try (InputStream in = PluginXmlTest.class.getResourceAsStream("/plugin.xml")) {
            plugin = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
        }
    }

    private static List<Element> all(String tag) {
        NodeList nodes = plugin.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    @Test
    void classes_named_areThere() {
        int found = 0;
        for (Element e : all("*")) {
            String name = e.getAttribute("class").split(":")[0];
            if (!name.isEmpty()) {
                Class<?> type = assertDoesNotThrow(
                        () -> Class.forName(name, false, PluginXmlTest.class.getClassLoader()), name);
                assertDoesNotThrow(() -> type.getConstructor(), name + " has a public constructor without arguments");
                found++;
            }
        }
        assertTrue(found > 20, "classes looked at: " + found);
    }

    @Test
    void icons_named_areThere() {
        for (Element e : all("*")) {
            String icon = e.getAttribute("icon");
            if (!icon.isEmpty()) {
                assertNotNull(PluginXmlTest.class.getResource("/" + icon), icon);
            }
        }
    }

    @Test
    void handlersAndKeys_ofOurCommands_nameDefinedCommands() {
        Set<String> defined = new HashSet<>();
        all("command").stream().filter(e -> e.hasAttribute("id") && !e.hasAttribute("commandId")).forEach(e -> assertTrue(
                defined.add(e.getAttribute("id")), "twice: " + e.getAttribute("id")));
        Set<String> handled = new HashSet<>();
        for (Element e : all("*")) {
            String id = e.getAttribute("commandId");
            if (id.startsWith("org.probeleaf")) {
                assertTrue(defined.contains(id), id);
                if (e.getTagName().equals("handler")) {
                    handled.add(id);
                }
            }
        }
        assertEquals(defined, handled, "each command has a handler");
    }

    /** The perspectives know views by the constants alone. */
    @Test
    void views_namedInTheCode_areDefinedAndNoOthers() throws IllegalAccessException {
        Set<String> defined = new HashSet<>();
        all("view").forEach(e -> defined.add(e.getAttribute("id")));
        Set<String> named = new HashSet<>();
        for (Field field : Views.class.getDeclaredFields()) {
            if (field.getType() == String.class) {
                field.setAccessible(true);
                named.add((String) field.get(null));
            }
        }
        assertEquals(named, defined);
    }
}
