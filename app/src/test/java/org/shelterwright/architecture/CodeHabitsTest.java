package org.shelterwright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import org.jspecify.annotations.NullMarked;

/** Habits that hold in every module. */
@AnalyzeClasses(packages = "org.shelterwright", importOptions = ImportOption.DoNotIncludeTests.class)
class CodeHabitsTest {

    @ArchTest
    static final ArchRule onlyTheCommandLinePrints = noClasses()
            .that()
            .resideOutsideOfPackage("org.shelterwright.app.cli..")
            .should(ACCESS_STANDARD_STREAMS)
            .because("results go to stdout and messages to stderr, and one place must keep them apart");

    @ArchTest
    static final ArchRule packagesAreNamedByTheirSubject = noClasses()
            .should()
            .resideInAnyPackage(
                    "..util..",
                    "..utils..",
                    "..common..",
                    "..impl..",
                    "..helper..",
                    "..helpers..",
                    "..manager..",
                    "..managers..")
            .because("a package is found by what it is about, and a drawer for everything is about nothing");

    @ArchTest
    static final ArchRule staticFieldsAreFinal = fields().that()
            .areStatic()
            .should()
            .beFinal()
            .because("static state that changes makes results depend on what ran before");

    @ArchTest
    static final ArchRule packagesStateThatNullIsMarked = classes()
            .should(resideInANullMarkedPackage())
            .because("what may be null is then written where it may, and checked while compiling everywhere else");

    private static ArchCondition<JavaClass> resideInANullMarkedPackage() {
        return new ArchCondition<>("reside in a package whose package-info says @NullMarked") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                boolean marked = item.getPackage()
                        .tryGetPackageInfo()
                        .filter(info -> info.isAnnotatedWith(NullMarked.class))
                        .isPresent();
                events.add(new SimpleConditionEvent(
                        item,
                        marked,
                        item.getName() + " resides in " + item.getPackageName()
                                + (marked ? ", which is marked" : ", which has no @NullMarked package-info")));
            }
        };
    }
}
