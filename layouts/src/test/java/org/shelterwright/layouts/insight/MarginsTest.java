package org.shelterwright.layouts.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.insight.UnitGrowth.Kind;
import org.shelterwright.layouts.insight.UnitGrowth.Way;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.study.ItemChange;

/** What River Post has to give, held against its ledger. */
class MarginsTest {
    private static final Checker CHECKER = Checker.standard();
    private static final Layout LAYOUT =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
    private static final Ledger LEDGER = CHECKER.check(LAYOUT);
    private static final Worsening WORSENING = new Worsening(LEDGER);

    private static UnitSpec unit(String id) {
        return LAYOUT.brief().units().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Layout grown(String id, ItemChange change) {
        Item item = LAYOUT.item(unit(id));
        return Grown.unit(LAYOUT, id, change.of(item).withId(item.id() + "-other"));
    }

    @Test
    void whatIsLeftIsWhatTheLedgerLeaves() {
        RoomLeft left = RoomLeft.of(CHECKER, LAYOUT);

        Row gross = LEDGER.of("mass.body-gross").get(0);
        assertThat(left.reserves())
                .anySatisfy(one -> {
                    assertThat(one.title()).isEqualTo("Gross mass of the body");
                    assertThat(one.left()).isEqualTo(gross.margin());
                    assertThat(one.unit()).isEqualTo("kg");
                })
                .anySatisfy(one -> assertThat(one.title()).startsWith("Load of rear axle"))
                .anySatisfy(one -> assertThat(one.title()).isEqualTo("Uniform load in whole floor"))
                .anySatisfy(one -> assertThat(one.unit()).isEqualTo("U"))
                .anySatisfy(one -> assertThat(one.unit()).isEqualTo("A"))
                .anySatisfy(one -> assertThat(one.unit()).isEqualTo("W"));
        Scene scene = CHECKER.scene(LAYOUT);
        Box anywhere = left.anywhere();
        assertThat(anywhere).isNotNull();
        assertThat(RoomLeft.filled(scene)).noneMatch(anywhere::overlaps);
        Box onFloor = left.onFloor();
        assertThat(onFloor).isNotNull();
        assertThat(onFloor.z0()).isZero();
        assertThat(left.breaks()).as("why nothing larger stands there").isNotNull();
    }

    @Test
    void whatAUnitMayGrowHoldsAndOneMoreBreaksWhatIsNamed() {
        UnitGrowth growth = new Growth(CHECKER, LAYOUT).of(unit("battery-box"));

        Way heavier = growth.way(Kind.HEAVIER).orElseThrow();
        assertThat(WORSENING.first(CHECKER.check(grown("battery-box", heavier(heavier.most())))))
                .isEmpty();
        assertThat(WORSENING.first(CHECKER.check(grown("battery-box", heavier(heavier.most() + 1)))))
                .contains(heavier.breaks());
        Way deeper = growth.way(Kind.DEEPER).orElseThrow();
        assertThat(WORSENING.first(CHECKER.check(grown("battery-box", deeper(deeper.most())))))
                .isEmpty();
        assertThat(WORSENING.first(CHECKER.check(grown("battery-box", deeper(deeper.most() + 1)))))
                .contains(deeper.breaks());
    }

    private static ItemChange heavier(int kg) {
        return new ItemChange("battery-box-24v", null, null, null, (double) kg);
    }

    private static ItemChange deeper(int mm) {
        return new ItemChange("battery-box-24v", mm * 1000, null, null, null);
    }

    @Test
    void whatGrowsStaysWhereItIsHeld() {
        Scene before = CHECKER.scene(LAYOUT);
        for (PlacedUnit unit : before.units()) {
            ItemChange change = new ItemChange(unit.item().id(), 20_000, 30_000, 40_000, null);
            Scene after = CHECKER.scene(grown(unit.id(), change));
            Box old = unit.outline(Situation.ON_STATION);
            Box now = after.unit(unit.id()).orElseThrow().outline(Situation.ON_STATION);
            Surface surface = unit.placement().station().surface();
            boolean hangs = surface == Surface.ROOF || surface == Surface.UNDER_UNIT;
            assertThat(hangs ? now.z1() : now.z0()).as(unit.id()).isEqualTo(hangs ? old.z1() : old.z0());
            assertThat(now.contains(old)).as(unit.id()).isTrue();
        }
    }

    @Test
    void whatRidesOnATallerUnitRisesWithIt() {
        Scene before = CHECKER.scene(LAYOUT);
        PlacedUnit rider = before.units().stream()
                .filter(unit -> unit.placement().station().surface() == Surface.ON_UNIT)
                .findFirst()
                .orElseThrow();
        String host = String.valueOf(rider.placement().station().host());

        Scene after =
                CHECKER.scene(grown(host, new ItemChange(LAYOUT.item(unit(host)).id(), null, null, 25_000, null)));

        assertThat(after.unit(rider.id()).orElseThrow().outline(Situation.ON_STATION))
                .isEqualTo(rider.outline(Situation.ON_STATION).moved(0, 0, 25_000));
    }

    @Test
    void anotherListKeepsWhatIsStillAskedForWhereItStands() {
        Layout less = Layout.empty(
                        LAYOUT.brief()
                                .withUnits(LAYOUT.brief().units().stream()
                                        .filter(one -> !one.id().equals("winch-crate"))
                                        .toList()),
                        LAYOUT.parts())
                .withContents(LAYOUT.contents());

        Layout kept = Grown.onto(LAYOUT, less);

        assertThat(kept.placements())
                .doesNotContainKey("winch-crate")
                .hasSize(LAYOUT.placements().size() - 1);
        assertThat(Map.copyOf(LAYOUT.placements())).containsAllEntriesOf(kept.placements());
    }
}
