package org.shelterwright.layouts.ledger.restraint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;

class SampleRestraintTest {
    private static final LimitBook BOOK = new LimitBook(RestraintLimits.all(Pushed.FASTENERS));

    private static Layout sample(String name) {
        return LayoutFiles.read(Samples.layout(name).orElseThrow()).layout();
    }

    private static Scene scene(Layout layout) {
        return new Checker(BOOK, RuleSets.builtIn()).scene(layout);
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void everyRowOfTheSamplesIsAssessedAndHolds(String name) {
        Ledger ledger = LedgerBuilder.full(BOOK, scene(sample(name)));

        assertThat(ledger.rows())
                .filteredOn(row -> row.verdict() == Verdict.NOT_ASSESSED)
                .isEmpty();
        assertThat(ledger.rows())
                .filteredOn(row -> row.verdict() == Verdict.BROKEN)
                .isEmpty();
        assertThat(ledger.of("restraint.fixing")).hasSizeGreaterThan(20);
    }

    @Test
    void anItemMadeToFailHoldsAgainAfterItsMendIsApplied() {
        // given the racks of the sample six times as heavy as they usually are, on two bolts of one side alone
        Layout layout = sample("river-post").withContents(Contents.NONE);
        Item item = layout.parts().item("rack-19-34u");
        Layout weak = with(layout, Pushed.with(item, kept(item.fixings(), Set.of("F1", "F5")), 6));

        // when
        Row row = row(weak);

        // then
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).matches("Fixing F[15] of Telemetry rack 1 bears .* under road \\(EN 12195-1\\), .*");
        Change change = Objects.requireNonNull(holding(weak).mend());
        assertThat(row.mend()).isEqualTo(change.sentence());
        Layout mended = with(weak, Pushed.changed(weak.parts().item("rack-19-34u"), change));
        assertThat(row(mended).verdict()).isIn(Verdict.MET, Verdict.CLOSE);
    }

    private static List<Fixing> kept(List<Fixing> fixings, Set<String> names) {
        return fixings.stream().filter(one -> names.contains(one.name())).toList();
    }

    private static Row row(Layout layout) {
        return LedgerBuilder.full(BOOK, scene(layout)).of("restraint.fixing").stream()
                .filter(one -> one.units().contains("rack-1"))
                .findFirst()
                .orElseThrow();
    }

    private static Holding holding(Layout layout) {
        return Holdings.of(scene(layout), Pushed.FASTENERS).all().stream()
                .filter(one -> one.unit().id().equals("rack-1"))
                .findFirst()
                .orElseThrow();
    }

    private static Layout with(Layout layout, Item item) {
        Map<String, Item> items = new LinkedHashMap<>(layout.parts().items());
        items.put(item.id(), item);
        Parts parts = new Parts(
                layout.body(), layout.parts().carrier(), layout.parts().trailer(), items);
        return layout.withAsked(layout.brief(), parts);
    }
}
