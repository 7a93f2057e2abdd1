package org.shelterwright.solver.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;

class SampleOrderTest {
    private final Checker checker = Checker.standard();

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void bringsInAllUnitsOfASampleAndHoldsEveryLimitOfBoltingDown(String sample) {
        Layout layout = LayoutFiles.read(Samples.layout(sample).orElseThrow()).layout();

        FoundOrder found = new OrderFinder().find(checker.scene(layout), List.of(), 2);

        if (System.getProperty("order.show") != null) {
            for (int i = 0; i < found.order().steps().size(); i++) {
                System.out.println(
                        found.order().steps().get(i) + "  " + found.reasons().get(i));
            }
            System.out.println(found.stuck() + " " + found.circles() + " " + found.handOnly() + " " + found.asked());
        }
        assertThat(found.stuck()).isEmpty();
        List<Row> rows = checker.check(layout.withBoltDown(found.order())).rows().stream()
                .filter(row -> row.subject() == Subject.BOLT_DOWN)
                .toList();
        if (System.getProperty("order.show") != null) {
            rows.forEach(row -> System.out.println(
                    row.verdict() + " " + row.use() + " " + row.title() + ": " + row.finding() + " " + row.mend()));
        }
        assertThat(rows).extracting(Row::verdict).doesNotContain(Verdict.BROKEN, Verdict.NOT_ASSESSED);
    }
}
