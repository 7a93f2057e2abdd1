package org.shelterwright.solver.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;

/**
 * The wires of the samples. After a change of a brief, of cables or of routing, renew the kept layouts, places left as they are,
 * with {@code mvn -pl solver -am test -Dtest=SampleRoutesTest -Dsurefire.failIfNoSpecifiedTests=false
 * -Dshelterwright.samples.renew=true}.
 */
class SampleRoutesTest {
    private static final Path FOLDER =
            Path.of("..", "layouts", "src", "main", "resources", "org", "shelterwright", "layouts", "samples");
    private static final Checker CHECKER = Checker.standard();

    private static Layout kept(String name) {
        return LayoutFiles.read(Samples.layout(name).orElseThrow()).layout();
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void theKeptLayoutHasTheRoutesThatTheRouterFinds(String name) throws IOException {
        Brief brief = LayoutFormats.BRIEF.open(Samples.brief(name)).value();
        Layout old = kept(name);
        Layout bare = old.withAsked(brief, Parts.of(brief, BuiltInCatalog.read())).withRoutes(Map.of());

        RoutePlan plan = WireRouter.route(CHECKER.scene(bare));

        byte[] found = LayoutFiles.bytes(plan.in(bare));
        if (Boolean.getBoolean("shelterwright.samples.renew")) {
            plan.unrouted().forEach(System.out::println);
            System.out.printf("%s: cost %.2f, bound %.2f, %d rounds%n", name, plan.cost(), plan.bound(), plan.rounds());
            for (Row row : CHECKER.check(plan.in(bare)).rows()) {
                if (row.subject() == Subject.CABLES || row.verdict() == Verdict.BROKEN) {
                    System.out.println(row.verdict() + " " + row.title() + ": " + row.finding());
                }
            }
            Files.write(FOLDER.resolve(name + ".layout.json"), found);
        }
        assertThat(plan.unrouted()).isEmpty();
        assertThat(plan.within()).isTrue();
        assertThat(plan.gap()).isLessThanOrEqualTo(0.02);
        assertThat(found).isEqualTo(Files.readAllBytes(FOLDER.resolve(name + ".layout.json")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void everyLimitOfCablesIsAssessedAndMet(String name) {
        Ledger ledger = CHECKER.check(kept(name));

        assertThat(ledger.rows())
                .filteredOn(row -> row.subject() == Subject.CABLES)
                .hasSizeGreaterThan(10)
                .allSatisfy(row -> assertThat(row.verdict())
                        .as(row.title() + ": " + row.finding())
                        .isIn(Verdict.MET, Verdict.CLOSE));
        assertThat(ledger.count(Verdict.BROKEN)).isZero();
    }
}
