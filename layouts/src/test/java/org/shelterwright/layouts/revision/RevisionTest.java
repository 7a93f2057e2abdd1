package org.shelterwright.layouts.revision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.PutUnit;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.insight.Grown;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.study.ItemChange;

class RevisionTest {
    private static final Checker CHECKER = Checker.standard();
    private static final Layout LAYOUT =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();

    @Test
    void nothingDiffersFromItself() {
        Revision revision = Revision.of(CHECKER, LAYOUT, LAYOUT);

        assertThat(revision.same()).isTrue();
        assertThat(revision.reissues()).isEmpty();
        assertThat(revision.reuse().holeShare()).isEqualTo(1);
        assertThat(revision.reuse().cableShare()).isEqualTo(1);
        assertThat(revision.reuse().holesNew()).isZero();
        assertThat(revision.reuse().cables()).isEqualTo(LAYOUT.brief().wires().size());
        assertThat(revision.reuse().cablesUntouched())
                .isEqualTo(revision.reuse().cables());
    }

    @Test
    void aUnitThatMovedLosesItsHolesAndNothingElse() {
        Place old = LAYOUT.placements().get("winch-crate").station();
        Place there = old.with(old.pose().moved(new Point(-25_000, 0, 0)));
        int fixings = (int)
                PlacedFixing.of(CHECKER.scene(LAYOUT).unit("winch-crate").orElseThrow(), Situation.ON_THE_ROAD).stream()
                        .filter(one -> !one.intoHost())
                        .count();

        Revision revision = Revision.of(CHECKER, LAYOUT, new PutUnit("winch-crate", there).apply(LAYOUT));

        assertThat(revision.units()).singleElement().satisfies(shift -> {
            assertThat(shift.name()).isEqualTo("Winch crate");
            assertThat(shift.massKg()).isEqualTo(0);
        });
        assertThat(revision.reuse().holes() - revision.reuse().holesKept()).isEqualTo(fixings);
        assertThat(revision.reuse().holesNew()).isEqualTo(fixings);
        assertThat(revision.steps()).extracting(StepShift::name).contains("Winch crate");
        assertThat(revision.reissues())
                .extracting(Revision.Reissue::document)
                .contains("Mass statement", "Work pack", "General arrangement drawing, pictures, 3D model");
    }

    @Test
    void aHeavierItemChangesChecksStepsAndDocumentsButNoHole() {
        ItemChange change = new ItemChange("battery-box-24v", null, null, null, 40.0);
        Layout heavier = Grown.items(
                LAYOUT, Map.of("battery-box-24v", change.of(LAYOUT.parts().item("battery-box-24v"))));

        Revision revision = Revision.of(CHECKER, LAYOUT, heavier);

        assertThat(revision.units()).singleElement().satisfies(shift -> {
            assertThat(shift.name()).isEqualTo("Battery box");
            assertThat(shift.massKg()).isEqualTo(40.0);
        });
        assertThat(revision.reuse().holeShare()).isEqualTo(1);
        assertThat(revision.wires()).isEmpty();
        assertThat(revision.limits()).extracting(LimitShift::limit).contains("mass.body-gross");
        assertThat(revision.steps()).extracting(StepShift::name).containsExactly("Battery box");
        assertThat(revision.reissues())
                .extracting(Revision.Reissue::document)
                .contains("Ledger", "Mass statement", "Work pack", "Load sheets of journeys with it")
                .doesNotContain("Cable schedule, cut list, tray fill, wiring overview");
    }

    @Test
    void aUnitThatIsGoneTakesItsCablesAlong() {
        Layout without = new TakeOutUnit("refrigerator").apply(LAYOUT);

        Revision revision = Revision.of(CHECKER, LAYOUT, without);

        assertThat(revision.units()).anySatisfy(shift -> {
            assertThat(shift.first()).isNotNull();
            assertThat(shift.second()).isNull();
        });
        List<WireShift> wires = revision.wires();
        assertThat(wires)
                .isNotEmpty()
                .allSatisfy(wire -> assertThat(wire.second()).isNull());
        assertThat(revision.reuse().cables() - revision.reuse().cablesKept()).isEqualTo(wires.size());
    }
}
