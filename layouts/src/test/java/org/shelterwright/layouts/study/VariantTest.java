package org.shelterwright.layouts.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;

class VariantTest {
    private static Layout start(String changes) {
        String axis =
                "{\"id\": \"x\", \"settings\": [{\"id\": \"s\"" + changes + "}, {\"id\": \"other\", \"crew\": 0}]}";
        SealedStudy study = PostStudy.sealed(PostStudy.text(axis, ""));
        return study.start(study.plan().run(1));
    }

    @Test
    void aSettingWithoutChangesIsTheBriefAsAsked() {
        SealedStudy study = PostStudy.sealed(PostStudy.text("", ""));

        assertThat(start("").brief()).isEqualTo(study.brief());
        assertThat(start("").placements()).isEmpty();
    }

    @Test
    void changesBodyCarrierCrewRulesAndLimits() {
        Layout start = start(", \"body\": \"box-6000\", \"carrier\": \"truck-three-axle\", \"crew\": 1,"
                + " \"ruleSets\": [\"shelter-common\", \"road-us\"], \"limits\": {\"mass.reserve-share\": 0.2}");

        assertThat(start.body().id()).isEqualTo("box-6000");
        assertThat(start.carrier().orElseThrow().id()).isEqualTo("truck-three-axle");
        assertThat(start.brief().crew()).isEqualTo(1);
        assertThat(start.brief().ruleSets()).containsExactly("shelter-common", "road-us");
        assertThat(start.brief().limits())
                .containsEntry("mass.reserve-share", 0.2)
                .containsEntry("mass.centre-y-off", 100.0);
    }

    @Test
    void swapsItemsAndDropsWiresThatNoLongerEnd() {
        Layout start = start(", \"swaps\": [{\"unit\": \"refrigerator\", \"item\": \"tool-cabinet\"}]");

        assertThat(start.item(unit(start, "refrigerator")).id()).isEqualTo("tool-cabinet");
        assertThat(start.parts().items()).doesNotContainKey("sample-refrigerator");
        assertThat(start.brief().wires()).noneMatch(wire -> wire.to().startsWith("refrigerator/"));
    }

    @Test
    void makesCopiesOfUnitsOrTakesThemOut() {
        Layout more = start(", \"quantities\": [{\"unit\": \"folding-chair\", \"count\": 3}]");
        Layout less = start(", \"quantities\": [{\"unit\": \"screen-2\", \"count\": 0}]");

        assertThat(more.brief().units())
                .extracting(UnitSpec::id)
                .contains("folding-chair", "folding-chair-2", "folding-chair-3");
        assertThat(less.brief().units()).extracting(UnitSpec::id).doesNotContain("screen-2");
        assertThat(less.brief().services().feed("screen-2")).isEmpty();
    }

    @Test
    void anItemThatComesDeeperGrowsTowardsItsFrontAndStaysAnItemOfItsId() {
        Layout start = start(", \"items\": [{\"item\": \"battery-box-24v\", \"deeper\": 40, \"heavierKg\": 12}]");
        Item old = PostStudy.CATALOG.item("battery-box-24v").orElseThrow();

        Item deeper = start.item(unit(start, "battery-box"));

        assertThat(deeper.id()).isEqualTo("battery-box-24v");
        assertThat(deeper.name()).isEqualTo("Battery box 24 V, 40 mm deeper, 12 kg heavier");
        assertThat(deeper.size()).isEqualTo(Size.ofMm(740, 500, 350));
        assertThat(deeper.mass().massKg()).isEqualTo(166);
        assertThat(deeper.mass().centre().x()).isEqualTo(370_000);
        assertThat(deeper.fixings()).isEqualTo(old.fixings());
        assertThat(deeper.zones().get(0).box())
                .isEqualTo(old.zones().get(0).box().moved(40_000, 0, 0));
        assertThat(deeper.zones().get(1)).isEqualTo(old.zones().get(1));
        assertThat(deeper.patches().get(0).area().x1()).isEqualTo(740_000);
    }

    @Test
    void whatBecomesLargerThanTheBodyIsRefusedAsARun() {
        Layout start = start(", \"items\": [{\"item\": \"battery-box-24v\", \"taller\": 3000}]");

        assertThat(SealedStudy.refusal(start, PostStudy.RULE_SETS))
                .hasValueSatisfying(why -> assertThat(why).startsWith("The unit \"battery-box\" cannot be placed: "));
    }

    private static UnitSpec unit(Layout layout, String id) {
        return layout.brief().units().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
