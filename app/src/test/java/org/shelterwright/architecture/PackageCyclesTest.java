package org.shelterwright.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Within a module, too, packages depend on each other in one direction only. */
class PackageCyclesTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.shelterwright");

    @ParameterizedTest
    @ValueSource(strings = {"catalog", "layouts", "solver", "app"})
    void noPackagesOfAModuleDependOnEachOtherInACircle(String module) {
        slices().assignedFrom(packagesOf("org.shelterwright." + module))
                .should()
                .beFreeOfCycles()
                .because("packages that need each other are one package, and can only be understood together")
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    private static SliceAssignment packagesOf(String root) {
        return new SliceAssignment() {
            @Override
            public SliceIdentifier getIdentifierOf(JavaClass javaClass) {
                String name = javaClass.getPackageName();
                return name.equals(root) || name.startsWith(root + ".")
                        ? SliceIdentifier.of(name)
                        : SliceIdentifier.ignore();
            }

            @Override
            public String getDescription() {
                return "packages of " + root;
            }
        };
    }
}
