package org.shelterwright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Which module may know which: catalog, then layouts, then solver, then app, and nothing the other way. */
@AnalyzeClasses(packages = "org.shelterwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ModuleArrowsTest {

    private static final String CATALOG = "org.shelterwright.catalog..";
    private static final String LAYOUTS = "org.shelterwright.layouts..";
    private static final String SOLVER = "org.shelterwright.solver..";
    private static final String APP = "org.shelterwright.app..";

    @ArchTest
    static final ArchRule catalogKnowsNoOtherModule = noClasses()
            .that()
            .resideInAPackage(CATALOG)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(LAYOUTS, SOLVER, APP)
            .because("what there is to build with does not depend on where anything stands")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule layoutsKnowOnlyTheCatalog = noClasses()
            .that()
            .resideInAPackage(LAYOUTS)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(SOLVER, APP)
            .because("a limit must judge a layout without knowing how it was found or shown")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule solverKnowsNoScreenAndNoDocument = noClasses()
            .that()
            .resideInAPackage(SOLVER)
            .should()
            .dependOnClassesThat()
            .resideInAPackage(APP)
            .because("a search runs alike behind a window, a command line and a study")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule theWindowToolkitStaysInApp = noClasses()
            .that()
            .resideOutsideOfPackage(APP)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "com.sun.javafx..")
            .because("everything below the app must run on a machine without a display")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule theSearchEngineStaysInSolver = noClasses()
            .that()
            .resideOutsideOfPackage(SOLVER)
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.optaplanner..")
            .because("the solver offers its own interface, so that the engine behind it can be replaced")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule theGraphLibraryStaysInSolver = noClasses()
            .that()
            .resideOutsideOfPackage(SOLVER)
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.jgrapht..")
            .because("finding routes and orders is the solver's work; limits only check what was found")
            .allowEmptyShould(true);
}
