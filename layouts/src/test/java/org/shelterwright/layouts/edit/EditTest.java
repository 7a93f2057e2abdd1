package org.shelterwright.layouts.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wish;
import org.shelterwright.layouts.file.SmallPost;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.rules.Figure;

class EditTest {
    private static final Layout START = SmallPost.layout();

    private static Pose station(Layout layout, String unit) {
        return layout.placements().get(unit).station().pose();
    }

    private static Pose road(Layout layout, String unit) {
        return layout.placements().get(unit).in(Situation.ON_THE_ROAD).pose();
    }

    @Test
    void whatAUnitCarriesGoesAlong() {
        Place place = Place.onFloor(new Pose(Point.ofMm(1300, 200, 0), QuarterTurn.R90));

        Layout moved = new PutUnit("table-1", place).apply(START);

        Point shift = Point.ofMm(300, 200, 0);
        assertThat(station(moved, "table-1")).isEqualTo(place.pose());
        assertThat(station(moved, "printer-1"))
                .isEqualTo(station(START, "printer-1").moved(shift));
        assertThat(station(moved, "tray-1")).isEqualTo(station(START, "tray-1").moved(shift));
        assertThat(road(moved, "printer-1")).isEqualTo(road(START, "printer-1"));
        assertThat(road(moved, "tray-1")).isEqualTo(road(START, "tray-1"));
    }

    @Test
    void whatAUnitCarriesTurnsAlong() {
        // The table of 700 × 1200 lies at yaw 90 from (1000, 0), so 1200 along x and 700 along y.
        // The printer of 400 × 500 at yaw 180 takes x 1100.5 to 1500.5 and y 100 to 600 of the body.
        Layout turned = new TurnUnit("table-1", QuarterTurn.R90).apply(START);

        // Turned by 90° more within 700 × 1200: (x, y) goes to (1000 + 700 − y, x − 1000).
        Box printer = station(turned, "printer-1").outline(SmallPost.PRINTER.size());
        assertThat(printer).isEqualTo(new Box(1_100_000, 100_500, 740_000, 1_600_000, 500_500, 1_040_000));
        assertThat(station(turned, "printer-1").yaw()).isEqualTo(QuarterTurn.R270);
    }

    @Test
    void fourTurnsChangeNothing() {
        Layout turned = START;
        for (int i = 0; i < 4; i++) {
            turned = new TurnUnit("table-1", QuarterTurn.R90).apply(turned);
        }

        assertThat(turned).isEqualTo(START);
    }

    @Test
    void whatAStowedUnitCarriesIsStowedWithIt() {
        Place road = Place.onFloor(Pose.at(Point.ofMm(0, 0, 0)));

        Layout stowed = new StowUnit("table-1", road).apply(START);
        Layout back = new StowUnit("table-1", null).apply(stowed);

        assertThat(road(stowed, "table-1")).isEqualTo(road.pose());
        assertThat(road(stowed, "printer-1")).isEqualTo(road(START, "printer-1"));
        assertThat(back).isEqualTo(START);
    }

    @Test
    void aUnitThatStaysOnItsHostFollowsItOntoTheRoad() {
        Layout staying = new StowUnit("printer-1", null).apply(START);

        Layout stowed = new StowUnit("table-1", Place.onFloor(new Pose(Point.ofMm(1000, 500, 0), QuarterTurn.R90)))
                .apply(staying);

        assertThat(road(stowed, "printer-1"))
                .isEqualTo(station(START, "printer-1").moved(Point.ofMm(0, 500, 0)));
        assertThat(station(stowed, "printer-1")).isEqualTo(station(START, "printer-1"));
        assertThat(new StowUnit("table-1", null).apply(stowed)).isEqualTo(staying);
    }

    @Test
    void takingAUnitOutTakesOutWhatItCarries() {
        assertThat(new TakeOutUnit("table-1").apply(START).placements()).containsOnlyKeys("rack-1");
    }

    @Test
    void swappedUnitsTakeEachOthersPlaces() {
        Layout swapped = new SwapUnits("rack-1", "table-1").apply(START);

        assertThat(station(swapped, "rack-1")).isEqualTo(station(START, "table-1"));
        assertThat(station(swapped, "table-1")).isEqualTo(station(START, "rack-1"));
        assertThat(swapped.placements().get("rack-1").pin()).isEqualTo(new Pin(true, false, false, true));
        assertThat(new SwapUnits("rack-1", "table-1").apply(swapped)).isEqualTo(START);
    }

    @Test
    void aUnitCannotBePutOnWhatItCarries() {
        Place place = new Place(Surface.ON_UNIT, "tray-1", Pose.at(Point.ORIGIN));

        assertThatThrownBy(() -> new PutUnit("table-1", place).apply(START))
                .hasMessage(
                        "The unit \"table-1\" cannot be mounted on \"tray-1\", since it carries that one. Take one of them"
                                + " out first.");
        assertThatThrownBy(() -> new SwapUnits("table-1", "tray-1").apply(START))
                .hasMessage(
                        "The units \"table-1\" and \"tray-1\" cannot change places, since one carries the other. Take one"
                                + " of them out first.");
    }

    @Test
    void refusesUnitsThatAreNotThereOrNotPlaced() {
        assertThatThrownBy(() -> new TakeOutUnit("rak-1").apply(START))
                .hasMessage("The brief has no unit \"rak-1\". Did you mean \"rack-1\"?");
        assertThatThrownBy(() -> new TurnUnit("rack-2", QuarterTurn.R90).apply(START))
                .hasMessage("The unit \"rack-2\" is not placed yet. Put it at a place first.");
        assertThatThrownBy(() ->
                        new PutUnit("rack-1", new Place(Surface.ON_UNIT, "rack-2", Pose.at(Point.ORIGIN))).apply(START))
                .hasMessage("The unit \"rack-2\" is not placed yet. Put it at a place first.");
    }

    @Test
    void removingAUnitRemovesWhatNamesIt() {
        Layout removed = new RemoveUnit("rack-1").apply(START);

        assertThat(removed.brief().units()).extracting(UnitSpec::id).doesNotContain("rack-1");
        assertThat(removed.brief().wishes()).extracting(Wish::kind).containsExactly(Wish.Kind.FACING);
        assertThat(removed.brief().wires()).isEmpty();
        assertThat(removed.placements()).doesNotContainKey("rack-1");
        assertThat(removed.parts().items()).containsKeys("rack", "generator");
        assertThat(new RemoveUnit("rack-2").apply(removed).parts().items()).doesNotContainKey("rack");
    }

    @Test
    void addsAUnitWithItsItem() {
        UnitSpec unit = new UnitSpec("rack-3", "Rack 3", "rack", "telemetry");

        Layout added = new AddUnit(unit, SmallPost.RACK).apply(START);

        assertThat(added.brief().units()).last().isEqualTo(unit);
        assertThat(new RemoveUnit("rack-3").apply(added)).isEqualTo(START);
        assertThatThrownBy(() -> new AddUnit(unit, SmallPost.RACK).apply(added))
                .hasMessage("The unit id \"rack-3\" is given already. Give the new unit another id.");
        assertThatThrownBy(() -> new AddUnit(
                                unit, SmallPost.item("rack", "[1, 1, 1]", "\"mounting\": {\"surfaces\": [\"floor\"]}"))
                        .apply(START))
                .hasMessage(
                        "The layout holds another version of item \"rack\". Take over the catalog's version first, or use"
                                + " the version that it holds.");
    }

    @Test
    void setsAndClearsLimits() {
        Layout set = new SetLimit(Figure.EXIT_WIDTH, 700.0).apply(START);

        assertThat(set.brief().limits()).containsEntry("access.exit-width", 700.0);
        assertThat(new SetLimit(Figure.EXIT_WIDTH, null).apply(set)).isEqualTo(START);
    }

    @Test
    void acceptsARowOnce() {
        Acceptance first = new Acceptance("fit.overlap", List.of("rack-1"), "Measured.", "A", "2026-02-01");
        Acceptance second = new Acceptance("fit.overlap", List.of("rack-1"), "Measured again.", "B", "2026-02-02");

        Layout accepted = new AcceptRow(second).apply(new AcceptRow(first).apply(START));

        assertThat(accepted.acceptances()).hasSize(2).contains(second);
        assertThat(new WithdrawAcceptance("fit.overlap", List.of("rack-1")).apply(accepted))
                .isEqualTo(START);
    }

    @Test
    void pinsAndRenames() {
        Layout changed = new RenameUnit("rack-1", "Big rack").apply(new PinUnit("rack-1", Pin.ALL).apply(START));

        assertThat(changed.placements().get("rack-1").pin()).isEqualTo(Pin.ALL);
        assertThat(changed.brief().units().get(0).name()).isEqualTo("Big rack");
    }
}
