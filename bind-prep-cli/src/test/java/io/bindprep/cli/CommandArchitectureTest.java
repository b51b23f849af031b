package io.bindprep.cli;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The command's rooms lie in one straight line too. */
@AnalyzeClasses(packages = "io.bindprep.cli", importOptions = ImportOption.DoNotIncludeTests.class)
final class CommandArchitectureTest {
    @ArchTest
    static final ArchRule ROOMS_HAVE_NO_CIRCLE =
            slices().matching("io.bindprep.cli.(*)..").should().beFreeOfCycles();
}
