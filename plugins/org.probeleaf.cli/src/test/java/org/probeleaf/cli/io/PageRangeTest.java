// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageRangeTest {

    @Test
    void of_rangesAndSinglePages_areRisingAndOnce() {
        assertEquals(List.of(1, 2, 3, 5), PageRange.parse("5, 1-3,2").of(9));
        assertEquals(List.of(7, 8, 9), PageRange.parse("7-").of(9));
        assertEquals(List.of(1, 2), PageRange.all().of(2));
    }

    @Test
    void of_pageBeyondTheEnd_isAmongThem() {
        assertTrue(PageRange.parse("2-999999").of(3).contains(4));
        assertEquals(5, PageRange.parse("2-999999").of(5).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "3-1", "a", "1,,2", "1-2-3", "-3", "1.5", "99999999999"})
    void parse_noRange_isRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> PageRange.parse(text));
    }

    @Property
    void of_anyPagesWritten_areTheSamePages(@ForAll @Size(min = 1, max = 20) Set<@IntRange(min = 1, max = 50) Integer> pages) {
        String text = pages.stream().map(String::valueOf).collect(Collectors.joining(","));
        assertEquals(List.copyOf(new TreeSet<>(pages)), PageRange.parse(text).of(50));
    }
}
