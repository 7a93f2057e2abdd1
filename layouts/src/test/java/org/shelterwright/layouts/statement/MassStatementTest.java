package org.shelterwright.layouts.statement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rig.TestCarrier;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.statement.MassLine.When;

class MassStatementTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Size CUBE = Size.ofMm(1000, 1000, 1000);

    @Test
    void linesHaveSourceGrowthArmsAndMoments() {
        MassData data = new MassData(100.0, Point.ofMm(500, 400, 300), MassBasis.SUPPLIER, 0.1, 4.0, null);
        MassStatement statement = MassStatement.of(new Rig()
                .put("rack", Rig.item("rack", CUBE, data), Rig.at(1000, 200, 0), null)
                .scene());

        MassLine line = statement.lines().get(1);

        assertThat(line.label()).isEqualTo("Rack");
        assertThat(line.unitId()).isEqualTo("rack");
        assertThat(line.source()).isEqualTo('S');
        assertThat(line.unitMassKg()).isEqualTo(100.0);
        assertThat(line.massKg()).isCloseTo(110, EXACT);
        assertThat(line.uncertaintyKg()).isEqualTo(4.0);
        assertThat(line.arm()).isEqualTo(Point.ofMm(1500, 600, 300));
        assertThat(line.momentXKgM()).isCloseTo(165, EXACT);
        assertThat(line.momentYKgM()).isCloseTo(66, EXACT);
        assertThat(line.momentZKgM()).isCloseTo(33, EXACT);
        assertThat(line.when()).isEqualTo(When.ALWAYS);
    }

    @Test
    void aUnitThatStandsElsewhereOnTheRoadHasTwoLinesAndIsCountedOnce() {
        MassStatement statement = MassStatement.of(new Rig()
                .put("box", Rig.item("box", CUBE, Rig.mass(100, 500, 500, 500)), Rig.at(3000, 0, 0), Rig.at(0, 0, 0))
                .scene());

        assertThat(statement.lines().subList(1, 3))
                .extracting(MassLine::when)
                .containsExactly(When.ON_THE_ROAD, When.ON_STATION);
        assertThat(statement.groups().get(1).massKg()).isCloseTo(100, EXACT);
        assertThat(statement.groups().get(1).momentXKgM()).isCloseTo(50, EXACT);
        assertThat(statement.states())
                .extracting(StateTotal::state)
                .containsExactly(
                        "on the road, tanks low",
                        "on the road, tanks full",
                        "on station, tanks low",
                        "on station, tanks full");
        assertThat(statement.states().get(0).xMm()).isCloseTo(500, EXACT);
        assertThat(statement.states().get(2).xMm()).isCloseTo(3500, EXACT);
    }

    @Test
    void totalsHaveCentreUncertaintyAndInertia() {
        // given two cubes of 100 and 300 kg with ± 3 and ± 4 kg, centres 2 m apart
        MassData one = new MassData(100.0, Point.ofMm(500, 500, 500), MassBasis.WEIGHED, null, 3.0, null);
        MassData two = new MassData(300.0, Point.ofMm(500, 500, 500), MassBasis.WEIGHED, null, 4.0, null);
        MassStatement statement = MassStatement.of(new Rig()
                .put("one", Rig.item("one", CUBE, one), Rig.at(0, 0, 0), null)
                .put("two", Rig.item("two", CUBE, two), Rig.at(2000, 0, 0), null)
                .scene());

        StateTotal total = statement.states().get(1);

        assertThat(total.what()).isEqualTo("Filled body");
        assertThat(total.massKg()).isCloseTo(400, EXACT);
        assertThat(total.uncertaintyKg()).isCloseTo(7, EXACT);
        assertThat(total.uncertaintyRssKg()).isCloseTo(5, EXACT);
        assertThat(total.xMm()).isCloseTo(2000, within(1e-6));
        assertThat(total.inertia().xx()).isCloseTo(400 / 6.0, EXACT);
        assertThat(total.inertia().zz()).isCloseTo(400 / 6.0 + 100 * 1.5 * 1.5 + 300 * 0.5 * 0.5, EXACT);
        assertThat(total.axles()).isEmpty();
    }

    @Test
    void theCarrierHasItsAxlesAndItsArmsFromTheDatumOfTheBody() {
        MassStatement statement = MassStatement.of(new Rig()
                .carrier(TestCarrier.truck()
                        .tank("fuel tank", -1000, 0, 600, 10, 110)
                        .seat(200, 0, 1500)
                        .build())
                .crew(1)
                .cube("box", 800, 2000, 500, 0)
                .scene());

        MassLine front = find(statement.lines(), "empty, on axle 1");
        MassLine person = find(statement.lines(), "person");
        StateTotal full = statement.states().get(3);

        assertThat(front.arm()).isEqualTo(Point.ofMm(5000, 1000, -200));
        assertThat(person.arm()).isEqualTo(Point.ofMm(5200, 1000, 300));
        assertThat(person.when()).isEqualTo(When.CREW_ABOARD);
        assertThat(full.what()).isEqualTo("Truck");
        assertThat(full.state()).isEqualTo("on the road, tanks full, crew aboard");
        assertThat(full.massKg()).isCloseTo(5000 + 800 + 110 + 75, EXACT);
        assertThat(full.inertia()).isNull();
        double rear = 2000 + 500 + 110 * 0.25 - 75 * 0.05;
        assertThat(full.axles().get(1).loadKg()).isCloseTo(rear, EXACT);
        assertThat(full.axles().get(1).reserveKg()).isCloseTo(9000 - rear, EXACT);
        assertThat(full.xMm())
                .isCloseTo(1000 * (5 + (-2000 * 4 - 800 * 2.5 - 110 * 1.0 + 75 * 0.2) / 5985), within(1e-6));
        assertThat(statement.states().get(2).state()).isEqualTo("on the road, tanks low, no crew");
        assertThat(statement.states().get(2).massKg()).isCloseTo(5810, EXACT);
    }

    @Test
    void theTrailerHasItsOwnLinesAndDatum() {
        Tank fuel = new Tank("fuel", Point.ofMm(500, 500, 500), 0, 40);
        MassStatement statement = MassStatement.of(new Rig()
                .carrier(TestCarrier.truck()
                        .coupling(-5500, 500, 100.0, null, null)
                        .build())
                .trailer(TestCarrier.centreAxleTrailer().build())
                .load(
                        "generator",
                        Rig.item("generator", CUBE, Rig.mass(300, 500, 500, 500), fuel),
                        Pose.at(Point.ofMm(500, -500, 500)))
                .scene());

        assertThat(statement.trailer()).hasSize(4);
        assertThat(statement.trailer().get(1).arm()).isEqualTo(Point.ofMm(1000, 0, 1000));
        StateTotal trailer = statement.states().get(statement.states().size() - 1);
        assertThat(trailer.what()).isEqualTo("Trailer");
        assertThat(trailer.massKg()).isCloseTo(840, EXACT);
        assertThat(trailer.axles().get(0).loadKg()).isCloseTo(500 + 340 * 2 / 3.0, EXACT);
        assertThat(statement.states())
                .extracting(StateTotal::state)
                .contains("on the road, tanks full, trailer on", "on the road, tanks full, trailer off");
    }

    @Test
    void whatIsNotKnownIsLeftOpen() {
        MassData none = new MassData(null, null, MassBasis.ESTIMATED, null, null, null);
        MassStatement statement = MassStatement.of(new Rig()
                .without(Figure.GROWTH_ESTIMATED)
                .put("box", Rig.item("box", CUBE, none), Rig.at(0, 0, 0), null)
                .carrier(TestCarrier.truck().height(null).build())
                .scene());

        MassLine line = statement.lines().get(1);
        StateTotal body = statement.states().get(0);
        assertThat(line.massKg()).isNull();
        assertThat(line.momentXKgM()).isNull();
        assertThat(line.growthShare()).isNull();
        assertThat(body.massKg()).isNull();
        assertThat(body.xMm()).isNull();
        assertThat(body.inertia()).isNull();
        assertThat(statement.states().get(2).axles()).isEmpty();
        assertThat(statement.gaps()).hasSize(2);
        assertThat(find(statement.lines(), "empty, on axle 1").arm()).isNull();
    }

    private static MassLine find(List<MassLine> lines, String item) {
        return lines.stream()
                .filter(line -> line.item().equals(item))
                .findFirst()
                .orElseThrow();
    }
}
