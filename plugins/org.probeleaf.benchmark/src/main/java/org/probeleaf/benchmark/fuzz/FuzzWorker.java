// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.fuzz;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

import org.probeleaf.benchmark.ChildJvm;

/**
 * Has damaged files read in a child process with little memory. A child that hangs or dies is replaced, and its file
 * counted. Children are told file numbers one by one on their standard input and answer on their standard output.
 */
final class FuzzWorker {

    /** Said by a child once a file is made and its reading begins. */
    static final String START = "start";
    private static final String END = "";
    /** Making a file is no part of the measured time, but must not last for ever either. */
    private static final long MAKE_WITHIN_SECONDS = 120;
    /** On a busy machine, how many times longer a file may take by the clock on the wall. */
    private static final int PATIENCE = 60;

    /** Hears what became of a file. */
    interface Listener {

        /** @param seconds how long it took: by the processor's time on a busy machine, else by the clock on the wall */
        void heard(int number, Outcome outcome, double seconds);
    }

    private final List<Path> seeds;
    private final long seed;
    private final String heap;
    private final int seconds;
    private final boolean busy;
    private Process child;
    private BlockingQueue<String> answers;
    private double took;

    /**
     * @param seconds how long a file may take
     * @param busy    whether time of the processor counts rather than that of the clock on the wall
     */
    FuzzWorker(List<Path> seeds, long seed, String heap, int seconds, boolean busy) {
        this.busy = busy;
        this.seeds = seeds;
        this.seed = seed;
        this.heap = heap;
        this.seconds = seconds;
    }

    /** Takes numbers from a queue, which others may take from too, until there are none. */
    void work(Queue<Integer> numbers, Listener listener) throws IOException, InterruptedException {
        try {
            for (Integer number = numbers.poll(); number != null; number = numbers.poll()) {
                Outcome outcome = read(number);
                listener.heard(number, outcome, took);
            }
        } finally {
            stop();
        }
    }

    private Outcome read(int number) throws IOException, InterruptedException {
        took = 0;
        if (child == null) {
            startChild();
        }
        child.getOutputStream().write((number + "\n").getBytes(StandardCharsets.UTF_8));
        child.getOutputStream().flush();
        String line = answers.poll(MAKE_WITHIN_SECONDS, TimeUnit.SECONDS);
        if (START.equals(line)) {
            line = answer();
        }
        if (line == null) {
            stop();
            return new Outcome(Outcome.Kind.HUNG, "");
        }
        if (line.equals(END)) {
            stop();
            return new Outcome(Outcome.Kind.DIED, "");
        }
        String[] parts = line.split("\t", 2);
        Outcome outcome = new Outcome(Outcome.Kind.valueOf(parts[0]), parts[1]);
        if (outcome.kind() == Outcome.Kind.OUT_OF_MEMORY) {
            stop();
        }
        return outcome;
    }

    /**
     * The answer, or null where it took too long. Where the machine has other things to do, time of the processor is
     * what counts: twice as much, since pages are read on several cores and code is made ready meanwhile.
     */
    private String answer() throws InterruptedException {
        long start = System.nanoTime();
        double before = processorSeconds();
        while (true) {
            String line = answers.poll(100, TimeUnit.MILLISECONDS);
            double wall = (System.nanoTime() - start) * 1e-9;
            took = busy ? processorSeconds() - before : wall;
            boolean late = took >= (busy ? 2 * seconds : seconds) || wall >= PATIENCE * seconds;
            if (line != null || late) {
                return line;
            }
        }
    }

    private double processorSeconds() {
        return child.toHandle().info().totalCpuDuration().orElse(Duration.ZERO).toMillis() * 1e-3;
    }

    private void startChild() throws IOException {
        List<String> args = new ArrayList<>(List.of("fuzz", "--child", "--seed", String.valueOf(seed)));
        seeds.forEach(s -> args.add(s.toString()));
        child = ChildJvm.start(List.of("-Xmx" + heap), args);
        answers = new LinkedBlockingQueue<>();
        BlockingQueue<String> queue = answers;
        BufferedReader lines = new BufferedReader(new InputStreamReader(child.getInputStream(),
                StandardCharsets.UTF_8));
        Thread reader = new Thread(() -> {
            try (lines) {
                lines.lines().filter(l -> !l.isEmpty()).forEach(queue::add);
            } catch (IOException | UncheckedIOException e) {
                // The child is gone, which the end mark says.
            }
            queue.add(END);
        }, "answers");
        reader.setDaemon(true);
        reader.start();
    }

    private void stop() throws InterruptedException {
        if (child != null) {
            child.destroyForcibly().waitFor();
            child = null;
        }
    }
}
