package org.shelterwright.solver.fit.whynot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Row.Sense;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

class WhyNotWordsTest {
    @Test
    void aBoundTellsItsUnitAndWhatWouldHelp() {
        assertThat(MassBounds.sentence("Gross mass of Truck", 959.6, "kg", true))
                .isEqualTo(
                        "Gross mass of Truck: misses its limit by at least 960 kg wherever the units stand. Leave out"
                                + " units or take lighter ones.");
        assertThat(MassBounds.sentence("Centre of mass along the body", 40, "mm", false))
                .isEqualTo(
                        "Centre of mass along the body: misses its limit by at least 40 mm even if every unit stood at"
                                + " the end of the body that helps most. Leave out units, take lighter ones, or use another body"
                                + " or carrier.");
    }

    @Test
    void aRelaxationTellsByHowMuchAndWhereButNotTheFindingAgain() {
        Ledger ledger = new Ledger(List.of(
                row("access.walkway", "Way to Rack 1", 600, 550, "mm"),
                row("access.walkway", "Way to Rack 3", 600, 520, "mm"),
                row("access.exit-count", "Number of exits", 2, 1, "exits")));

        assertThat(Relaxing.sentences(ledger))
                .containsExactly(
                        "access.exit-count by 1 exits (Number of exits)",
                        "access.walkway by 80 mm (Way to Rack 3; 1 more place)");
    }

    @Test
    void theFewestBrokenLimitsAreLookedForByLeavingOutOneAtATime() {
        Row first = row("a", "A", 2, 1, "mm");
        Row second = row("b", "B", 2, 1, "mm");
        Ledger both = new Ledger(List.of(first, second));

        Ledger fewest = Relaxing.fewest(
                List.of(both), relaxed -> new Ledger(relaxed.contains("b") ? List.of(second) : List.of(first, second)));

        assertThat(Relaxing.broken(fewest)).containsExactly("b");
        assertThat(Relaxing.broken(new Ledger(Stream.of(first, first).toList())))
                .containsExactly("a");
    }

    private static Row row(String limit, String title, double needed, double there, String unit) {
        return new Row(
                limit,
                Subject.ACCESS,
                title,
                List.of(),
                null,
                "always",
                Sense.AT_LEAST,
                needed,
                null,
                there,
                needed / there,
                unit,
                Verdict.BROKEN,
                "The finding.",
                null,
                Source.commonPractice("test"));
    }
}
