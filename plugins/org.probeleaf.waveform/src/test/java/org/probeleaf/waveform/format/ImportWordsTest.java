// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ImportWordsTest {

    @Test
    void parse_ofWritten_givesTheSameOptions() {
        ImportOptions all = ImportOptions.none().withDelimiter('\t').withDecimal(',').withFirstRow(5).withTimeColumn(0)
                .withInterval(2.5e-9).withScale(0.1).withNames(List.of("CH 1", "50%", "x=y"));
        assertEquals(all, ImportWords.parse(ImportWords.of(all)));
        assertEquals(ImportOptions.none(), ImportWords.parse(ImportWords.of(ImportOptions.none())));
        assertEquals("", ImportWords.of(ImportOptions.none()));
        assertEquals("delimiter=space", ImportWords.of(ImportOptions.none().withDelimiter(' ')));
    }

    @ParameterizedTest
    @ValueSource(strings = {"delimiter=", "delimiter=ab", "row=five", "colour=red", "interval", "time"})
    void parse_ofNonsense_saysHow(String line) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> ImportWords.parse(line));
        assertTrue(e.getMessage().contains(line) && e.getMessage().contains("delimiter=;"), e.getMessage());
    }
}
