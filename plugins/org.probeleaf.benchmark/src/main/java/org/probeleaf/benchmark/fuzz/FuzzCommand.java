// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.fuzz;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads damaged PDFs in processes of their own, with little memory and little time. */
@Command(name = "fuzz", mixinStandardHelpOptions = true,
        description = "Reads damaged and hostile PDFs made from good ones: each must be read or clearly refused.")
public final class FuzzCommand implements Callable<Integer> {

    @Parameters(paramLabel = "PDF|DIR", arity = "1..*", description = "Good PDFs, or folders with some in them.")
    private List<Path> sources;

    @Option(names = "--count", paramLabel = "N", defaultValue = "5000",
            description = "How many damaged files. Default: ${DEFAULT-VALUE}.")
    private int count;

    @Option(names = "--from", paramLabel = "N", defaultValue = "0",
            description = "Number of the first; with --count 1 just one file is looked at.")
    private int from;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Makes other files.")
    private long seed;

    @Option(names = "--heap", paramLabel = "SIZE", defaultValue = "512m", description = "Default: ${DEFAULT-VALUE}.")
    private String heap;

    @Option(names = "--seconds", paramLabel = "N", defaultValue = "10",
            description = "How long one file may take. Default: ${DEFAULT-VALUE}.")
    private int seconds;

    @Option(names = "--busy", description = "Let time of the processor count: for a machine with other things to do.")
    private boolean busy;

    @Option(names = "--children", paramLabel = "N", defaultValue = "2",
            description = "How many processes at a time. Default: ${DEFAULT-VALUE}.")
    private int children;

    @Option(names = "--keep", paramLabel = "DIR", description = "Write the files that fail there.")
    private Path keep;

    @Option(names = "--child", hidden = true)
    private boolean child;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException, InterruptedException {
        List<Path> files = files(sources);
        Mutator mutator = new Mutator(bytes(files), seed);
        return child ? answer(mutator) : ask(files, mutator);
    }

    /** The good files: PDFs as they are, those of folders in the order of their names. */
    static List<Path> files(List<Path> sources) throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path source : sources) {
            if (Files.isDirectory(source)) {
                try (Stream<Path> inside = Files.walk(source)) {
                    inside.filter(p -> p.toString().endsWith(".pdf")).sorted().forEach(files::add);
                }
            } else {
                files.add(source);
            }
        }
        if (files.isEmpty()) {
            throw new IOException("no PDF there; name PDF files or folders that hold some");
        }
        return files;
    }

    static List<byte[]> bytes(List<Path> files) throws IOException {
        List<byte[]> all = new ArrayList<>();
        for (Path file : files) {
            all.add(Files.readAllBytes(file));
        }
        return all;
    }

    private int answer(Mutator mutator) throws IOException {
        PrintWriter print = spec.commandLine().getOut();
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            byte[] bytes = mutator.mutant(Integer.parseInt(line)).bytes();
            print.println(FuzzWorker.START);
            print.flush();
            Outcome outcome = Outcome.of(bytes);
            print.println(outcome.kind() + "\t" + outcome.detail());
            print.flush();
        }
        return 0;
    }

    private int ask(List<Path> files, Mutator mutator) throws IOException, InterruptedException {
        long start = System.nanoTime();
        FuzzTally tally = new FuzzTally(mutator, seed, keep, spec.commandLine().getErr());
        Queue<Integer> numbers = new ConcurrentLinkedQueue<>();
        IntStream.range(from, from + count).forEach(numbers::add);
        Queue<Integer> slow = new ConcurrentLinkedQueue<>();
        run(children, files, numbers, (number, outcome, took) -> {
            if (outcome.kind() == Outcome.Kind.HUNG) {
                slow.add(number);
            } else {
                tally.heard(number, outcome, took);
            }
        });
        // What was slow beside others gets the machine for itself before it is said to hang.
        run(1, files, slow, tally);
        tally.print(spec.commandLine().getOut(), (System.nanoTime() - start) / 1_000_000_000);
        return tally.isGood() ? 0 : 1;
    }

    private void run(int processes, List<Path> files, Queue<Integer> numbers, FuzzWorker.Listener listener)
            throws IOException, InterruptedException {
        List<Thread> threads = new ArrayList<>();
        Queue<Exception> broken = new ConcurrentLinkedQueue<>();
        for (int i = 0; i < processes; i++) {
            Thread thread = new Thread(() -> {
                try {
                    new FuzzWorker(files, seed, heap, seconds, busy).work(numbers, listener);
                } catch (IOException | InterruptedException | RuntimeException e) {
                    broken.add(e);
                }
            }, "fuzz " + i);
            thread.start();
            threads.add(thread);
        }
        for (Thread thread : threads) {
            thread.join();
        }
        if (!broken.isEmpty()) {
            throw new IOException("the run broke off", broken.peek());
        }
    }
}
