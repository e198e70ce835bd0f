// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.speed;

import java.io.IOException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import org.probeleaf.benchmark.ChildJvm;
import org.probeleaf.benchmark.sheet.MadeSheet;
import org.probeleaf.schematic.netlist.Netlist;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reads a large made set of sheets in a process with little memory. */
@Command(name = "set", mixinStandardHelpOptions = true,
        description = "Reads a made set of 40 pages and 3000 parts in a process with 1 GiB of heap.")
public final class SetCommand implements Callable<Integer> {

    private static final double MEBI = 1 << 20;

    @Option(names = "--parts", paramLabel = "N", defaultValue = "3000", description = "Default: ${DEFAULT-VALUE}.")
    private int parts;

    @Option(names = "--pages", paramLabel = "N", defaultValue = "40", description = "Default: ${DEFAULT-VALUE}.")
    private int pages;

    @Option(names = "--heap", paramLabel = "SIZE", defaultValue = "1g", description = "Default: ${DEFAULT-VALUE}.")
    private String heap;

    @Option(names = "--here", hidden = true, description = "Read in this process.")
    private boolean here;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (!here) {
            Process child = ChildJvm.start(List.of("-Xmx" + heap), List.of("set", "--here", "--parts",
                    String.valueOf(parts), "--pages", String.valueOf(pages), "--heap", heap));
            spec.commandLine().getOut().print(new String(child.getInputStream().readAllBytes(),
                    StandardCharsets.UTF_8));
            spec.commandLine().getOut().flush();
            return child.waitFor();
        }
        MadeSheet made = MadeSheet.of(parts, pages, 1);
        Path file = Files.createTempFile("probeleaf-set", ".pdf");
        try {
            Files.write(file, made.pdf());
            return read(made, Files.readAllBytes(file));
        } finally {
            Files.delete(file);
        }
    }

    private int read(MadeSheet made, byte[] pdf) throws IOException {
        PrintWriter print = spec.commandLine().getOut();
        ManagementFactory.getMemoryPoolMXBeans().forEach(p -> p.resetPeakUsage());
        long start = System.nanoTime();
        Netlist netlist = MadeReading.read(pdf);
        double seconds = (System.nanoTime() - start) * 1e-9;
        double peak = ManagementFactory.getMemoryPoolMXBeans().stream().filter(p -> p.getType() == MemoryType.HEAP)
                .mapToLong(p -> p.getPeakUsage().getUsed()).sum() / MEBI;
        int exact = MadeReading.exact(made, netlist);
        print.printf(Locale.ROOT, "%d pages, %d parts, %d of %d nets exact, %.1f s from cold, heap of at most %s,"
                + " peaks of its pools together %.0f MiB%n", netlist.sheets().size(), netlist.parts().size(), exact,
                made.nets().size(), seconds, heap, peak);
        print.flush();
        return exact == made.nets().size() && netlist.parts().size() == parts ? 0 : 1;
    }
}
