// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;

/** The arrows of the house: who may lean on whom, and what no core bundle may know. */
@AnalyzeClasses(packages = "org.probeleaf", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {

    /** For each bundle the bundles of ours that it may lean on. */
    private static final Map<String, Set<String>> ARROWS = new TreeMap<>(Map.ofEntries(
            Map.entry("schematic", Set.of()),
            Map.entry("drawing", Set.of("schematic")),
            Map.entry("recognition", Set.of("schematic", "drawing")),
            Map.entry("trace", Set.of("schematic")),
            Map.entry("waveform", Set.of("schematic")),
            Map.entry("photo", Set.of("schematic", "waveform")),
            Map.entry("diagnosis", Set.of("schematic", "trace")),
            Map.entry("job", Set.of("schematic", "drawing", "recognition", "trace", "diagnosis")),
            Map.entry("handover", Set.of("schematic", "drawing", "recognition", "trace", "waveform", "photo", "diagnosis",
                    "job")),
            Map.entry("cli", Set.of("schematic", "drawing", "recognition", "trace", "waveform", "photo", "diagnosis",
                    "job", "handover")),
            Map.entry("workbench", Set.of("schematic", "drawing", "recognition", "trace", "waveform", "photo", "diagnosis",
                    "job", "handover"))));

    private static final String[] CORE = {"org.probeleaf.schematic..", "org.probeleaf.drawing..",
        "org.probeleaf.recognition..", "org.probeleaf.trace..", "org.probeleaf.waveform..", "org.probeleaf.photo..",
        "org.probeleaf.diagnosis..", "org.probeleaf.job..", "org.probeleaf.handover.."};

    @ArchTest
    static void everyBundle_leansOnlyOnThoseItMay(JavaClasses house) {
        for (Map.Entry<String, Set<String>> arrow : ARROWS.entrySet()) {
            Set<String> others = new TreeSet<>(ARROWS.keySet());
            others.remove(arrow.getKey());
            others.removeAll(arrow.getValue());
            if (!others.isEmpty()) {
                noClasses().that().resideInAPackage(in(arrow.getKey())).should().dependOnClassesThat()
                        .resideInAnyPackage(others.stream().map(HouseTest::in).toArray(String[]::new))
                        .because("of the arrows of the house").allowEmptyShould(true).check(house);
            }
        }
    }

    /** A bundle that stands in the tree but not in {@link #ARROWS} would be held to nothing. */
    @ArchTest
    static final ArchRule EVERY_CLASS_IS_IN_A_KNOWN_BUNDLE = classes().should().resideInAnyPackage(
            ARROWS.keySet().stream().map(HouseTest::in).toArray(String[]::new))
            .orShould().resideInAPackage("org.probeleaf.feature..");

    /** A package and its {@code internal} count as one: a factory of the API may name what it makes. */
    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES = slices().assignedFrom(new SliceAssignment() {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
            return SliceIdentifier.of(type.getPackageName().replaceFirst("\\.internal$", ""));
        }

        @Override
        public String getDescription() {
            return "packages with their internal part";
        }
    }).should().beFreeOfCycles();

    @ArchTest
    static void internalPackages_areUsedInTheirBundleOnly(JavaClasses house) {
        for (String bundle : ARROWS.keySet()) {
            noClasses().that().resideOutsideOfPackage(in(bundle)).should().dependOnClassesThat()
                    .resideInAPackage("org.probeleaf." + bundle + "..internal..").allowEmptyShould(true).check(house);
        }
    }

    @ArchTest
    static final ArchRule NO_BUNDLE_BUT_THE_WORKBENCH_KNOWS_A_WINDOW = noClasses()
            .that().resideInAnyPackage(coreAnd("org.probeleaf.cli.."))
            .should().dependOnClassesThat(resideInAnyPackage("org.eclipse..", "org.osgi..", "javax.swing..",
                    "java.awt.event..", "java.awt.peer..", "java.applet.."))
            .orShould().dependOnClassesThat().haveNameMatching(
                    "java\\.awt\\.(Window|Frame|Dialog|Toolkit|Component|Container|Robot|Desktop|SystemTray)");

    @ArchTest
    static final ArchRule ONLY_DRAWING_AND_HANDOVER_PAINT = noClasses()
            .that().resideInAnyPackage("org.probeleaf.schematic..", "org.probeleaf.recognition..",
                    "org.probeleaf.trace..", "org.probeleaf.waveform..", "org.probeleaf.diagnosis..", "org.probeleaf.job..",
                    "org.probeleaf.cli..")
            .should().dependOnClassesThat().resideInAnyPackage("java.awt..", "javax.imageio..");

    @ArchTest
    static final ArchRule ONLY_DRAWING_AND_HANDOVER_READ_PDF = noClasses()
            .that().resideOutsideOfPackages("org.probeleaf.drawing..", "org.probeleaf.handover..")
            .should().dependOnClassesThat().resideInAPackage("org.apache.pdfbox..");

    /** Paths in the trace, the matching of names to symbols in the recognition. */
    @ArchTest
    static final ArchRule ONLY_TRACE_AND_RECOGNITION_KNOW_THE_GRAPH_LIBRARY = noClasses()
            .that().resideOutsideOfPackages("org.probeleaf.trace..", "org.probeleaf.recognition..")
            .should().dependOnClassesThat().resideInAPackage("org.jgrapht..");

    @ArchTest
    static final ArchRule ONLY_PHOTO_KNOWS_THE_IMAGE_LIBRARY = noClasses()
            .that().resideOutsideOfPackage("org.probeleaf.photo..")
            .should().dependOnClassesThat().resideInAnyPackage("boofcv..", "georegression..", "org.ejml..", "org.ddogleg..");

    @ArchTest
    static final ArchRule NOTHING_PRINTS = noClasses().that().resideOutsideOfPackage("org.probeleaf.feature..")
            .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS);

    @ArchTest
    static final ArchRule ONLY_THE_COMMAND_LINE_ENDS_THE_PROCESS = noClasses()
            .that().resideOutsideOfPackages("org.probeleaf.cli", "org.probeleaf.feature..")
            .should().callMethod(System.class, "exit", int.class)
            .orShould().callMethod(Runtime.class, "halt", int.class);

    @ArchTest
    static final ArchRule NO_CORE_BUNDLE_READS_PREFERENCES = noClasses().that().resideInAnyPackage(CORE)
            .should().dependOnClassesThat().resideInAPackage("java.util.prefs..");

    /** Offline and private: no network use at all. */
    @ArchTest
    static final ArchRule NOTHING_USES_THE_NETWORK = noClasses()
            .should().dependOnClassesThat().resideInAnyPackage("java.net.http..", "javax.net..", "java.rmi..")
            .orShould().dependOnClassesThat().haveNameMatching(
                    "java\\.net\\.(Socket|ServerSocket|DatagramSocket|MulticastSocket|URLConnection"
                            + "|HttpURLConnection|InetAddress|InetSocketAddress)");

    private static String in(String bundle) {
        return "org.probeleaf." + bundle + "..";
    }

    private static String[] coreAnd(String more) {
        String[] all = Arrays.copyOf(CORE, CORE.length + 1);
        all[CORE.length] = more;
        return all;
    }
}
