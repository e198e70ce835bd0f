// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.json;

import java.io.IOException;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;

/** Breaks lines down to the items of lists of objects; deeper objects and number pairs stay on one line. */
final class LinePrinter extends DefaultPrettyPrinter {

    private static final long serialVersionUID = 1L;
    private static final DefaultIndenter BREAK = new DefaultIndenter(" ", "\n");
    /** Document, list, item, list in the item, item of that: what lies deeper stays on its line. */
    private static final int DEEPEST_BREAK = 4;

    private int depth;

    @Override
    public DefaultPrettyPrinter createInstance() {
        return new LinePrinter();
    }

    @Override
    public void writeStartObject(JsonGenerator g) throws IOException {
        g.writeRaw('{');
        depth++;
    }

    @Override
    public void writeEndObject(JsonGenerator g, int entries) throws IOException {
        depth--;
        g.writeRaw('}');
    }

    @Override
    public void beforeObjectEntries(JsonGenerator g) throws IOException {
        breakLine(g, 1);
    }

    @Override
    public void writeObjectEntrySeparator(JsonGenerator g) throws IOException {
        g.writeRaw(',');
        if (!breakLine(g, 1)) {
            g.writeRaw(' ');
        }
    }

    @Override
    public void writeObjectFieldValueSeparator(JsonGenerator g) throws IOException {
        g.writeRaw(": ");
    }

    @Override
    public void writeStartArray(JsonGenerator g) throws IOException {
        g.writeRaw('[');
        depth++;
    }

    @Override
    public void writeEndArray(JsonGenerator g, int entries) throws IOException {
        depth--;
        g.writeRaw(']');
    }

    @Override
    public void beforeArrayValues(JsonGenerator g) throws IOException {
        if (depth == 2 || depth == DEEPEST_BREAK) {
            breakLine(g, DEEPEST_BREAK);
        }
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator g) throws IOException {
        g.writeRaw(',');
        if (depth == 2 || depth == DEEPEST_BREAK) {
            breakLine(g, DEEPEST_BREAK);
        } else {
            g.writeRaw(' ');
        }
    }

    private boolean breakLine(JsonGenerator g, int deepest) throws IOException {
        if (depth > deepest) {
            return false;
        }
        BREAK.writeIndentation(g, depth);
        return true;
    }
}
