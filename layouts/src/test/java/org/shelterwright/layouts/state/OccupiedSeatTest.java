package org.shelterwright.layouts.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.statement.MassLine;
import org.shelterwright.layouts.statement.MassStatement;
import org.shelterwright.layouts.statement.StateTotal;
import org.shelterwright.layouts.trial.TrialItem;

class OccupiedSeatTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Quantity MASS = Quantity.ofBody(Influence.MASS);
    private static final Quantity MOMENT_X = Quantity.ofBody(Influence.MOMENT_X);

    private static final Item DESK = Furniture.desk();
    private static final Item SEAT = Furniture.seat(true);

    /** Regulation (EU) 1230/2012, Annex I: 75 kg at each seat. */
    @Test
    void peopleCountWhereTheyWorkOrRideOnly() {
        LoadStates states = LoadStates.of(new Rig()
                .put("desk", DESK, Rig.at(0, 0, 0), null)
                .put("seat", SEAT, Rig.at(2000, 0, 0), null)
                .occupant("desk", Situation.ON_STATION)
                .occupant("desk", Situation.ON_STATION)
                .occupant("seat", Situation.ON_THE_ROAD)
                .scene());

        Extreme road = states.most(MASS, states.roadModes());
        Extreme station = states.most(MASS, List.of(new Mode(Situation.ON_STATION, false)));

        assertThat(road.worst()).isEqualTo(70 + 75);
        assertThat(road.state().text()).isEqualTo("on the road, everybody inside");
        assertThat(station.worst()).isEqualTo(70 + 150);
        assertThat(states.least(MASS, states.modes()).worst()).isEqualTo(70);
        assertThat(states.least(MASS, states.modes()).state().text()).endsWith(", nobody inside");
    }

    /** The worst set of people is found: held against all sets of three. */
    @Test
    void theWorstSetOfPeopleGoverns() {
        Rig rig = new Rig().put("desk", DESK, Rig.at(1500, 0, 0), null);
        int[] places = {0, 1200, 3400};
        for (int i = 0; i < places.length; i++) {
            rig.put("s" + i, SEAT, Rig.at(places[i], 1000, 0), null).occupant("s" + i, Situation.ON_THE_ROAD);
        }
        LoadStates states = LoadStates.of(rig.scene());
        double most = 0;
        for (int set = 0; set < 8; set++) {
            double kg = 40 + 3 * 30;
            double moment = 40 * 1.8;
            for (int i = 0; i < places.length; i++) {
                moment += 30 * (places[i] / 1000.0 + 0.25);
                kg += (set >> i & 1) * 75;
                moment += (set >> i & 1) * 75 * (places[i] / 1000.0 + 0.25);
            }
            most = Math.max(most, moment / kg);
        }

        Extreme found = states.mostRatio(MOMENT_X, MASS, states.roadModes()).orElseThrow();

        assertThat(found.worst()).isCloseTo(most, EXACT);
        assertThat(found.state().text()).isEqualTo("on the road, person at S2");
    }

    @Test
    void aPersonAtWorkSitsInTheirOwnSeatZone() {
        List<OccupiedSeat> seats = OccupiedSeat.of(new Rig()
                .put("desk", DESK, Rig.at(0, 0, 0), null)
                .occupant("desk", Situation.ON_STATION)
                .occupant("desk", Situation.ON_STATION)
                .scene());

        assertThat(seats.get(0).at()).isEqualTo(Point.ofMm(1000, 250, 700));
        assertThat(seats.get(1).at()).isEqualTo(Point.ofMm(1000, 750, 700));
        assertThat(seats.get(1).stand()).isEqualTo(Rect.ofMm(600, 500, 1400, 1000));
    }

    @Test
    void aSeatThatIsMissingIsAGap() {
        LoadStates states = LoadStates.of(new Rig()
                .put("desk", DESK, Rig.at(0, 0, 0), null)
                .put("stool", Furniture.seat(false), Rig.at(2000, 0, 0), null)
                .occupant("stool", Situation.ON_THE_ROAD)
                .occupant("desk", Situation.ON_THE_ROAD)
                .occupant("stool", Situation.ON_STATION)
                .occupant("stool", Situation.ON_STATION)
                .scene());

        assertThat(states.gaps(MASS))
                .extracting(Gap::sentence)
                .containsExactly(
                        "Stool has no seat for person 1 to ride on. Name a bolted seat, or give the item a seat zone on"
                                + " the road.",
                        "Desk has no seat for person 1 to ride on. Name a bolted seat, or give the item a seat zone on"
                                + " the road.",
                        "Stool has no seat for person 2 to work at. Give the item a seat zone, or name another unit.");
    }

    @Test
    void aFigureThatIsNotSetIsAGap() {
        LoadStates states = LoadStates.of(new Rig()
                .without(Figure.PERSON_HEIGHT)
                .put("seat", SEAT, Rig.at(2000, 0, 0), null)
                .occupant("seat", Situation.ON_THE_ROAD)
                .scene());

        assertThat(states.gaps(MASS).get(0).sentence())
                .isEqualTo("No rule set states mass.person-height, which people inside need. Set it in the brief.");
    }

    @Test
    void theMassStatementListsThem() {
        MassStatement statement = MassStatement.of(new Rig()
                .put("desk", DESK, Rig.at(0, 0, 0), null)
                .put("seat", SEAT, Rig.at(2000, 0, 0), null)
                .occupant("desk", Situation.ON_STATION)
                .occupant("seat", Situation.ON_THE_ROAD)
                .scene());

        assertThat(statement.lines())
                .filteredOn(line -> line.item().equals("person"))
                .extracting(line ->
                        line.label() + " " + line.massKg() + " " + line.when().words())
                .containsExactly("Desk 75.0 people at work", "Seat 75.0 people riding");
        assertThat(statement.lines())
                .filteredOn(line -> line.when() == MassLine.When.RIDING)
                .singleElement()
                .satisfies(line -> assertThat(line.arm()).isEqualTo(Point.ofMm(2250, 250, 700)));
        assertThat(statement.groups().get(1).massKg()).isEqualTo(70 + 75);
        assertThat(statement.states())
                .extracting(StateTotal::state)
                .contains("on the road, tanks full, everybody inside", "on station, tanks low, nobody inside");
    }

    private static final class Furniture {
        static Item desk() {
            return TrialItem.of("desk", 600, 1000, 750)
                    .mass(40.0, Point.ofMm(300, 500, 600))
                    .zone(Purpose.SEAT, Box.ofMm(600, 0, 0, 1400, 500, 1400))
                    .zone(Purpose.SEAT, Box.ofMm(600, 500, 0, 1400, 1000, 1400))
                    .build();
        }

        static Item seat(boolean bolted) {
            var seat = TrialItem.of(bolted ? "seat" : "stool", 500, 500, 1100)
                    .kind(ItemKind.SEAT)
                    .mass(30.0, Point.ofMm(250, 250, 400));
            return (bolted ? seat.bolted() : seat).build();
        }
    }
}
