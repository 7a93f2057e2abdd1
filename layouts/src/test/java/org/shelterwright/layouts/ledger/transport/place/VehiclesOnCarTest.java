package org.shelterwright.layouts.ledger.transport.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.SampleJourney;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.TransportRig;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.LegScene;

/** The vehicle and the trailer of the sample on one wagon. TEA Pamphlet 55-19, AAR open-top rules section 6: at least 254 mm apart. */
class VehiclesOnCarTest {
    private static final String WAGON = "wagon-1";
    private static final Box TRUCK = box("river-post");

    private static Box box(String piece) {
        return SampleJourney.loaded()
                .load(WAGON)
                .orElseThrow()
                .piece(piece)
                .orElseThrow()
                .box();
    }

    /** The trailer so many millimetres before the front of the truck, and so many to its left. */
    private static LegScene beside(int alongMm, int acrossMm, String... ruleSets) {
        OpenedJourney opened = SampleJourney.opened();
        List<Stand> stands = List.of(
                new Stand("river-post", Pose.at(TRUCK.low()), true),
                new Stand(
                        "generator-trailer",
                        Pose.at(new Point(TRUCK.x1() + alongMm * 1000, TRUCK.y0() + acrossMm * 1000, 0)),
                        true));
        List<Load> loads = opened.journey().loads().stream()
                .map(load -> load.id().equals(WAGON) ? load.withStands(stands) : load)
                .toList();
        Journey journey = opened.journey().withLoads(loads);
        JourneyScene scene = TransportRig.CHECKER.scene(journey, opened.parts());
        LegScene rail = rail(scene);
        if (ruleSets.length == 0) {
            return rail;
        }
        return rail(TransportRig.CHECKER.scene(journey.with(under(rail.leg(), List.of(ruleSets))), opened.parts()));
    }

    private static Leg under(Leg leg, List<String> ruleSets) {
        return new Leg(
                leg.id(),
                leg.name(),
                leg.mode(),
                leg.from(),
                leg.to(),
                leg.distanceKm(),
                ruleSets,
                List.of(),
                leg.outline(),
                leg.lineCategory(),
                leg.curveM(),
                leg.wet(),
                leg.ramp(),
                leg.restrictions(),
                leg.drives(),
                leg.loads(),
                leg.lifts(),
                leg.acceptances(),
                leg.note());
    }

    private static LegScene rail(JourneyScene scene) {
        return scene.legs().stream()
                .filter(leg -> leg.loads().stream().anyMatch(load -> load.id().equals(WAGON)))
                .findFirst()
                .orElseThrow();
    }

    private static Row gap(LegScene leg) {
        List<Row> rows = new ArrayList<>(TransportRig.rows(leg, "vehicle-gap"));
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    @Test
    void tenInchesBetweenThemAreEnoughAndAMillimetreLessIsNot() {
        Row enough = gap(beside(254, 0));
        Row less = gap(beside(253, 0));

        assertThat(enough.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(enough.demand()).isEqualTo(254);
        assertThat(enough.capacity()).isEqualTo(254);
        assertThat(enough.mend()).isNull();
        assertThat(enough.units()).containsExactly("river-post", "generator-trailer", WAGON);
        assertThat(less.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(less.finding()).matches("Between .+ and .+ are 253 mm on .+\\.");
        assertThat(less.mend()).isEqualTo("Move one of them by 1 mm or more.");
    }

    @Test
    void sideBySideTheRoomBetweenTheirSidesCounts() {
        int width = (TRUCK.y1() - TRUCK.y0()) / 1000;

        assertThat(gap(beside(-2_000, width + 300)).verdict()).isEqualTo(Verdict.MET);
        assertThat(gap(beside(-2_000, width + 300)).capacity()).isEqualTo(300);
        assertThat(gap(beside(-2_000, width + 200)).mend()).isEqualTo("Move one of them by 54 mm or more.");
    }

    @Test
    void whatOverlapsHasNoRoomBetween() {
        Row row = gap(beside(-40, 0));

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).matches(".+ and .+ overlap by 40 mm on .+\\.");
        assertThat(row.mend()).isEqualTo("Move one of them by 294 mm or more.");
    }

    @Test
    void withoutTheFigureItIsNotAssessed() {
        Row row = gap(beside(300, 0, "rail-ctu", "lashing"));

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo("No value is set for \"Least distance between vehicles on a car\" (transport.vehicle-gap).");
    }

    @Test
    void whatStandsOnNoCarAndIsNotDrivenIsLeftBehind() {
        OpenedJourney opened = SampleJourney.opened();
        LegScene leg = rail(TransportRig.CHECKER.scene(opened.journey(), opened.parts()));

        Row row = TransportRig.rows(leg, "everything-goes").get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.units()).contains("river-post", "generator-trailer");
        assertThat(row.capacity())
                .isEqualTo(opened.journey().pieces().size() - row.units().size());
        assertThat(row.finding()).endsWith(" have no place on this leg.");
        assertThat(row.mend()).isEqualTo("Put it on a car of this leg, or let it go on its own wheels.");
    }

    @Test
    void aDrivenVehicleAndItsTrailerGoToo() {
        LegScene road = SampleJourney.loaded().legs().stream()
                .filter(leg -> !leg.drives().isEmpty())
                .findFirst()
                .orElseThrow();

        List<String> left = TransportRig.rows(road, "everything-goes").get(0).units();

        assertThat(road.drives()).anyMatch(drive -> drive.trailer().isPresent());
        assertThat(left).doesNotContain("river-post", "generator-trailer");
    }
}
