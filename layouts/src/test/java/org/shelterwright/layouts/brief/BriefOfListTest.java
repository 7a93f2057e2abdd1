package org.shelterwright.layouts.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.trial.TrialItem;

class BriefOfListTest {
    private static Item item(String id) {
        return TrialItem.of(id, 400, 400, 400).build();
    }

    @Test
    void numbersThatAreTakenByAnotherItemAreNotGivenTwice() {
        List<UnitSpec> units = BriefOfList.units(List.of(item("case"), item("case-2")), Map.of("case", 2));

        assertThat(units).extracting(UnitSpec::id).containsExactly("case-1", "case-2-of-2", "case-2");
        assertThat(units).extracting(UnitSpec::item).containsExactly("case", "case", "case-2");
    }

    @Test
    void noneOfAnItemIsNoUnit() {
        assertThat(BriefOfList.units(List.of(item("case")), Map.of("case", 0))).isEmpty();
    }
}
