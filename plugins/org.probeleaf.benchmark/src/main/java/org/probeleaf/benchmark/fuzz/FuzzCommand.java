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
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
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

    private final Map<Outcome.Kind, Integer> counts = new EnumMap<>(Outcome.Kind.class);
    private final List<String> failures = new ArrayList<>();

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
        AtomicInteger next = new AtomicInteger(from);
        List<Thread> threads = new ArrayList<>();
        List<Exception> broken = new ArrayList<>();
        for (int i = 0; i < children; i++) {
            Thread thread = new Thread(() -> {
                try {
                    new FuzzWorker(files, seed, heap, seconds, busy).work(next, from + count,
                            (number, outcome) -> heard(number, outcome, mutator));
                } catch (IOException | InterruptedException | RuntimeException e) {
                    synchronized (broken) {
                        broken.add(e);
                    }
                }
            }, "fuzz " + i);
            thread.start();
            threads.add(thread);
        }
        for (Thread thread : threads) {
            thread.join();
        }
        if (!broken.isEmpty()) {
            throw new IOException("the run broke off", broken.get(0));
        }
        PrintWriter print = spec.commandLine().getOut();
        failures.stream().sorted().forEach(print::println);
        print.printf("%d files of seed %d in %d s:", count, seed, (System.nanoTime() - start) / 1_000_000_000);
        for (Outcome.Kind kind : Outcome.Kind.values()) {
            print.printf(" %d %s%s", counts.getOrDefault(kind, 0), kind.name().toLowerCase(Locale.ROOT)
                    .replace('_', ' '), kind == Outcome.Kind.DIED ? "\n" : ",");
        }
        print.flush();
        return failures.isEmpty() ? 0 : 1;
    }

    private synchronized void heard(int number, Outcome outcome, Mutator mutator) {
        counts.merge(outcome.kind(), 1, Integer::sum);
        if (outcome.good()) {
            return;
        }
        Mutator.Mutant mutant = mutator.mutant(number);
        String line = String.format("%6d %s (%s) %s", number, outcome.kind(), mutant.how(), outcome.detail());
        failures.add(line);
        spec.commandLine().getErr().println(line);
        if (keep != null) {
            try {
                Files.createDirectories(keep);
                Files.write(keep.resolve(seed + "-" + number + ".pdf"), mutant.bytes());
            } catch (IOException e) {
                spec.commandLine().getErr().println("cannot keep it: " + e.getMessage());
            }
        }
    }
}
