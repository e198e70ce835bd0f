// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.capture;

import java.util.List;
import java.util.Optional;

/**
 * What one file holds.
 *
 * @param channels traces of values, in the order of the file
 * @param digital  traces of logic states, in the order of the file
 */
public record Capture(List<Channel> channels, List<DigitalChannel> digital) {

    public Capture {
        channels = List.copyOf(channels);
        digital = List.copyOf(digital);
    }

    /** The trace of values with that name, letter case ignored. */
    public Optional<Channel> channel(String name) {
        return channels.stream().filter(c -> c.name().equalsIgnoreCase(name)).findFirst();
    }

    /** The trace of states with that name, letter case ignored. */
    public Optional<DigitalChannel> digital(String name) {
        return digital.stream().filter(c -> c.name().equalsIgnoreCase(name)).findFirst();
    }

    /** The names of all traces. */
    public List<String> names() {
        return java.util.stream.Stream.concat(channels.stream().map(Channel::name),
                digital.stream().map(DigitalChannel::name)).toList();
    }
}
