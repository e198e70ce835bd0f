// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import org.probeleaf.waveform.format.TextPreview.ColumnRole;
import org.probeleaf.waveform.format.TextPreview.RowKind;

class TextPreviewTest {

    private static final String TEXT = "Tide bench\n\nNo;Time;CLK;Unit\n;us;;\n1;0,5;1,25;V\n2;1,0;980,5;mV\n# pause\n3;1,5;1,5;V\n4;2;1;V\n";

    private static Optional<TextPreview> preview(String text, ImportOptions options) throws IOException {
        return CaptureReader.preview(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), options);
    }

    @Test
    void rowsAndColumns_areToldApart() throws IOException {
        TextPreview p = preview(TEXT, ImportOptions.none()).orElseThrow();
        assertEquals(';', p.delimiter());
        assertEquals(',', p.decimal());
        assertEquals(5, p.firstRow());
        assertEquals(List.of(RowKind.ABOVE, RowKind.ABOVE, RowKind.NAMES, RowKind.UNITS, RowKind.DATA, RowKind.DATA,
                RowKind.REMARK, RowKind.DATA, RowKind.DATA), p.rows().stream().map(TextPreview.Row::kind).toList());
        assertEquals(List.of(ColumnRole.COUNT, ColumnRole.TIME, ColumnRole.CHANNEL, ColumnRole.UNIT),
                p.columns().stream().map(TextPreview.Kind::role).toList());
        assertEquals("CLK", p.columns().get(2).name());
        assertEquals(List.of("2", "1,0", "980,5", "mV"), p.rows().get(5).cells());
    }

    @Test
    void options_areObeyedOrRefusedInOneLine() throws IOException {
        assertEquals(ColumnRole.CHANNEL, preview(TEXT, ImportOptions.none().withTimeColumn(0)).orElseThrow().columns().get(1).role());
        assertEquals("row 5: there are 4 columns, where column 7 was to be the time", assertThrows(CaptureException.class,
                () -> preview(TEXT, ImportOptions.none().withTimeColumn(7))).getMessage());
        assertEquals("row 9: data were to begin in row 99, which is not among the first 9 rows", assertThrows(
                CaptureException.class, () -> preview(TEXT, ImportOptions.none().withFirstRow(99))).getMessage());
    }

    @Test
    void otherFormats_haveNoRows() throws IOException {
        assertTrue(preview("$timescale 1us $end\n", ImportOptions.none()).isEmpty());
        assertTrue(preview("RIFF....WAVE", ImportOptions.none()).isEmpty());
        assertTrue(preview("#15abcde\n", ImportOptions.none()).isEmpty());
    }
}
