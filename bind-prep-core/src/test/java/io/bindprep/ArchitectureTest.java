package io.bindprep;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaModifier.PUBLIC;
import static com.tngtech.archunit.lang.conditions.ArchConditions.dependOnClassesThat;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Packages as DEVELOPERS.md tells them and as the code has them; its table is read here, so that neither drifts. */
@AnalyzeClasses(
        packages = "io.bindprep",
        importOptions = {ImportOption.DoNotIncludeTests.class, ArchitectureTest.NoTemplates.class})
final class ArchitectureTest {
    private static final String BASE = "io.bindprep";

    /** Package of compiled templates: public, and jte's own affair. */
    static final class NoTemplates implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return !location.contains("/report/html/template/");
        }
    }

    /** Libraries by the name that the table gives them. */
    private static final Map<String, String> LIBRARIES = Map.of(
            "org.apache.pdfbox", "PDFBox",
            "org.apache.fontbox", "PDFBox",
            "org.apache.tika", "Tika",
            "tools.jackson", "Jackson",
            "com.fasterxml.jackson", "Jackson",
            "gg.jte", "jte",
            "io.nayuki", "qrcodegen");

    /** A row of the table: {@code | `pdf` | `page`, `marks` | PDFBox |}. */
    private static final Pattern ROW = Pattern.compile("\\| `([a-z.]+)` \\| ([^|]+) \\| ([^|]+) \\|");

    private static final Set<String> ANSWERS_OF_THE_MACHINE =
            Set.of("now", "currentTimeMillis", "getDefault", "systemDefault", "systemDefaultZone", "getenv");

    @ArchTest
    static void packagesUseWhatTheTableOfDevelopersMdSays(JavaClasses core) throws IOException {
        assertThat(used(core)).isEqualTo(table());
    }

    @ArchTest
    static final ArchRule packages_are_free_of_cycles =
            slices().matching(BASE + ".(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule nothing_inside_uses_the_facade =
            noClasses().that().resideOutsideOfPackage(BASE).should(dependOnClassesThat(resideInAPackage(BASE)));

    @ArchTest
    static final ArchRule only_pdf_and_paint_know_PDFBox = noClasses()
            .that()
            .resideOutsideOfPackages(BASE + ".pdf..", BASE + ".paint..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..");

    @ArchTest
    static final ArchRule only_pdf_knows_Tika = noClasses()
            .that()
            .resideOutsideOfPackage(BASE + ".pdf..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.tika..");

    @ArchTest
    static final ArchRule only_setting_and_report_know_Jackson = noClasses()
            .that()
            .resideOutsideOfPackages(BASE + ".setting..", BASE + ".report..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tools.jackson..", "com.fasterxml.jackson..");

    @ArchTest
    static final ArchRule only_html_knows_jte = noClasses()
            .that()
            .resideOutsideOfPackage(BASE + ".report.html..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("gg.jte..");

    @ArchTest
    static final ArchRule no_network_no_front_end = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.net..", "picocli..", "org.apache.maven..");

    @ArchTest
    static final ArchRule nothing_is_printed_and_nothing_exits = noClasses()
            .should()
            .accessTargetWhere(describe(
                    "print or exit",
                    access -> touches(access, "java.lang.System", "out", "err", "exit", "console")
                            || touches(access, "java.lang.Runtime", "exit", "halt")
                            || access.getTarget().getName().equals("printStackTrace")));

    /** Reports are the same in any locale and time zone, at any time. */
    @ArchTest
    static final ArchRule nothing_asks_the_machine_for_its_time_locale_or_environment = noClasses()
            .should()
            .accessTargetWhere(describe(
                    "ask the machine",
                    access -> ANSWERS_OF_THE_MACHINE.contains(access.getTarget().getName())
                            && access.getTargetOwner().getPackageName().startsWith("java.")));

    @ArchTest
    static final ArchRule texts_are_made_with_a_locale = noClasses()
            .should()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "formatted", Object[].class)
            .orShould()
            .callMethod(String.class, "toLowerCase")
            .orShould()
            .callMethod(String.class, "toUpperCase");

    @ArchTest
    static final ArchRule static_fields_are_final =
            fields().that().areStatic().should().beFinal();

    @ArchTest
    static final ArchRule what_the_public_sees_is_ours_or_the_JDKs = classes()
            .that(describe("can be seen from outside", ArchitectureTest::visible))
            .and()
            .resideOutsideOfPackage(BASE + ".pdf.*") // rooms of one floor, which hand PDFBox's objects to each other
            .should(new ArchCondition<>("show only public types of ours and the JDK's") {
                @Override
                public void check(JavaClass shown, ConditionEvents events) {
                    signature(shown)
                            .filter(type -> !mayBeShown(type))
                            .forEach(type -> events.add(SimpleConditionEvent.violated(
                                    shown, shown.getName() + " shows " + type.getName())));
                }
            });

    private static boolean touches(JavaAccess<?> access, String owner, String... names) {
        return access.getTargetOwner().getName().equals(owner)
                && Arrays.asList(names).contains(access.getTarget().getName());
    }

    private static boolean visible(JavaClass c) {
        return c.getModifiers().contains(PUBLIC)
                && c.getEnclosingClass().map(ArchitectureTest::visible).orElse(true);
    }

    private static boolean mayBeShown(JavaClass type) {
        JavaClass base = type.getBaseComponentType();
        String name = base.getPackageName();
        return base.isPrimitive()
                || name.startsWith("java.")
                || (name.equals(BASE) || name.startsWith(BASE + ".")) && visible(base);
    }

    /** Every type that a user of the class must know; thrown ones too. */
    private static Stream<JavaClass> signature(JavaClass c) {
        Stream<JavaType> parents = Stream.concat(c.getSuperclass().stream(), c.getInterfaces().stream());
        Stream<JavaType> fields =
                c.getFields().stream().filter(ArchitectureTest::shown).map(JavaField::getType);
        Stream<JavaType> calls =
                c.getCodeUnits().stream().filter(ArchitectureTest::shown).flatMap(ArchitectureTest::types);
        return Stream.of(parents, fields, calls)
                .flatMap(s -> s)
                .flatMap(type -> type.getAllInvolvedRawTypes().stream())
                .distinct();
    }

    private static boolean shown(JavaMember member) {
        return member.getModifiers().contains(PUBLIC) || member.getModifiers().contains(JavaModifier.PROTECTED);
    }

    private static Stream<JavaType> types(JavaCodeUnit unit) {
        return Stream.of(
                        Stream.of(unit.getReturnType()),
                        unit.getParameterTypes().stream(),
                        unit.getExceptionTypes().stream())
                .flatMap(s -> s);
    }

    private static Map<String, Set<String>> used(JavaClasses core) {
        Map<String, Set<String>> used = new TreeMap<>();
        for (JavaClass c : core) {
            String from = c.getPackageName();
            Set<String> to = used.computeIfAbsent(from, k -> new TreeSet<>());
            for (Dependency d : c.getDirectDependenciesFromSelf()) {
                String target = d.getTargetClass().getBaseComponentType().getPackageName();
                if (!target.isEmpty() && !target.equals(from)) {
                    to.add(named(target));
                }
            }
            to.removeAll(Set.of("JDK", "JSpecify"));
        }
        return used;
    }

    private static String named(String target) {
        if (target.startsWith("java.") || target.startsWith("javax.imageio") || target.startsWith("javax.xml.")) {
            return "JDK";
        }
        if (target.startsWith("org.jspecify.")) {
            return "JSpecify";
        }
        return LIBRARIES.entrySet().stream()
                .filter(e -> target.equals(e.getKey()) || target.startsWith(e.getKey() + "."))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(target);
    }

    private static Map<String, Set<String>> table() throws IOException {
        Map<String, Set<String>> table = new TreeMap<>();
        for (String line : Files.readAllLines(Path.of(System.getProperty("bindprep.root"), "DEVELOPERS.md"))) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                Set<String> uses = Stream.concat(cell(row.group(2)).map(name -> BASE + "." + name), cell(row.group(3)))
                        .collect(Collectors.toCollection(TreeSet::new));
                String name = row.group(1);
                assertThat(table.put(name.equals(BASE) ? BASE : BASE + "." + name, uses))
                        .as("the row of " + name + " stands once")
                        .isNull();
            }
        }
        return table;
    }

    private static Stream<String> cell(String text) {
        return Arrays.stream(text.replace("`", "").split(","))
                .map(String::strip)
                .filter(name -> !name.equals("–"));
    }
}
