// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.feature.workbench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Makes a folder with a {@code plugins} folder in it runnable: writes {@code configuration/config.ini} and
 * {@code bundles.info} from the manifests of the jars, copies the launch script and the examples.
 */
public final class Assembler {

    private static final Set<String> EARLY = Set.of("org.eclipse.equinox.common", "org.eclipse.equinox.event",
            "org.apache.felix.scr");
    private static final String CONFIGURATOR = "org.eclipse.equinox.simpleconfigurator";

    private final Path home;

    private Assembler(Path home) {
        this.home = home;
    }

    /**
     * Assembles.
     *
     * @param args the folder to make runnable, the folder whose files are copied into it, the folder of the examples,
     *             the checkout that has the licences
     * @throws IOException where a file cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        Assembler assembler = new Assembler(Path.of(args[0]));
        List<BundleJar> bundles = assembler.bundles();
        assembler.writeConfiguration(bundles);
        assembler.copyFolder(Path.of(args[1]));
        assembler.copyExamples(Path.of(args[2]));
        assembler.copyLicences(Path.of(args[3]));
    }

    private List<BundleJar> bundles() throws IOException {
        List<BundleJar> bundles = new ArrayList<>();
        try (Stream<Path> jars = Files.list(home.resolve("plugins"))) {
            for (Path jar : jars.filter(p -> p.toString().endsWith(".jar")).sorted().toList()) {
                BundleJar.of(jar).ifPresent(bundles::add);
            }
        }
        bundles.sort(Comparator.comparing(BundleJar::name));
        for (int i = 1; i < bundles.size(); i++) {
            if (bundles.get(i).name().equals(bundles.get(i - 1).name())) {
                throw new IOException("two versions of " + bundles.get(i).name() + " in " + home.resolve("plugins")
                        + ": pin it in the parent's dependencyManagement, or build with 'clean'");
            }
        }
        return bundles;
    }

    private void writeConfiguration(List<BundleJar> bundles) throws IOException {
        Path folder = Files.createDirectories(home.resolve("configuration"));
        Files.createDirectories(folder.resolve(CONFIGURATOR));
        List<String> lines = new ArrayList<>(List.of("#encoding=UTF-8", "#version=1"));
        String configurator = null;
        for (BundleJar b : bundles) {
            if (b.name().equals(CONFIGURATOR)) {
                configurator = b.file();
            }
            lines.add(String.join(",", b.name(), b.version(), "plugins/" + b.file(), startLevel(b.name()),
                    Boolean.toString(starts(b.name()))));
        }
        if (configurator == null) {
            throw new IOException("no " + CONFIGURATOR + " among the jars in " + home.resolve("plugins"));
        }
        Files.write(folder.resolve(CONFIGURATOR).resolve("bundles.info"), lines, StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("config.ini"), String.join("\n",
                "osgi.bundles=reference\\:file\\:" + configurator + "@1\\:start",
                "osgi.bundles.defaultStartLevel=4",
                "org.eclipse.equinox.simpleconfigurator.configUrl=file\\:" + CONFIGURATOR + "/bundles.info",
                "eclipse.product=org.probeleaf.workbench.product",
                "eclipse.application=org.probeleaf.workbench.application",
                "osgi.instance.area.default=@user.home/.probeleaf",
                ""), StandardCharsets.UTF_8);
    }

    private static String startLevel(String name) {
        if (name.equals(CONFIGURATOR)) {
            return "1";
        }
        return EARLY.contains(name) ? "2" : "4";
    }

    private static boolean starts(String name) {
        return EARLY.contains(name) || name.equals(CONFIGURATOR) || name.equals("org.eclipse.core.runtime");
    }

    private void copyLicences(Path root) throws IOException {
        Files.copy(root.resolve("LICENSE"), home.resolve("LICENSE"), StandardCopyOption.REPLACE_EXISTING);
        Path to = Files.createDirectories(home.resolve("licences"));
        try (Stream<Path> files = Files.list(root.resolve("docs/licences"))) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private void copyFolder(Path from) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = home.resolve(from.relativize(file).toString());
                Files.createDirectories(to.getParent());
                Files.copy(file, to, StandardCopyOption.REPLACE_EXISTING);
                if (Files.isExecutable(file)) {
                    to.toFile().setExecutable(true, false);
                }
            }
        }
    }

    private void copyExamples(Path examples) throws IOException {
        if (!Files.isDirectory(examples)) {
            return;
        }
        try (Stream<Path> files = Files.walk(examples, 2)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".pdf")).toList()) {
                Path to = home.resolve("examples").resolve(examples.relativize(file).toString());
                Files.createDirectories(to.getParent());
                Files.copy(file, to, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }
}
