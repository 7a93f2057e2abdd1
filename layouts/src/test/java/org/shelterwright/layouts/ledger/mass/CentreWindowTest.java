package org.shelterwright.layouts.ledger.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rules.Figure;

class CentreWindowTest {
    private static final Size CUBE = Size.ofMm(1000, 1000, 1000);

    @Test
    void aWindowIsHeldFromItsMiddle() {
        // given a centre at (100 · 500 + 300 · 2500) / 400 = 2000 mm
        Rig rig = window(1700, 2100).cube("one", 100, 0, 0, 0).cube("two", 300, 2000, 0, 0);
        // when
        Row row = rig.row(new CentreAlong());
        // then
        assertThat(row.demand()).isCloseTo(100, within(1e-9));
        assertThat(row.capacity()).isCloseTo(200, within(1e-9));
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding())
                .isEqualTo("The centre of mass lies 2000 to 2000 mm from the rear wall, and may lie 1700 to 2100 mm.");
    }

    @Test
    void aCentreBeyondTheWindowSaysWhichWayAndOneMoveThatMendsIt() {
        Rig rig = window(1700, 1900).cube("one", 100, 0, 0, 0).cube("two", 300, 2000, 0, 0);

        Row row = rig.row(new CentreAlong());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.excess()).isCloseTo(100, within(1e-9));
        assertThat(row.finding()).endsWith("1700 to 1900 mm: 100 mm too far forward.");
        assertThat(row.mend()).isEqualTo("Move mass to the rear: Two alone would do it with 133 mm.");
    }

    @Test
    void aMoveThatTheBodyHasNoRoomForIsNotNamed() {
        Row row = window(2500, 3000)
                .cube("one", 300, 0, 0, 0)
                .cube("two", 400, 2900, 0, 0)
                .row(new CentreAlong());

        assertThat(row.mend())
                .isEqualTo("Move mass forward, of several units: Two, which would do most, is not enough alone.");
    }

    @Test
    void theOtherEndIsHeldToo() {
        Row row = window(2050, 2400)
                .cube("one", 100, 0, 0, 0)
                .cube("two", 300, 2000, 0, 0)
                .row(new CentreAlong());

        assertThat(row.excess()).isCloseTo(50, within(1e-9));
        assertThat(row.finding()).endsWith(": 50 mm too far to the rear.");
        assertThat(row.mend()).isEqualTo("Move mass forward: Two alone would do it with 67 mm.");
    }

    @Test
    void aWindowWithOneEndIsHeldAtThatEnd() {
        Rig low = new Rig().limit(Figure.CENTRE_X_LOW, 1500).cube("one", 100, 1000, 0, 0);
        Rig high = new Rig().limit(Figure.CENTRE_X_HIGH, 1400).cube("one", 100, 1000, 0, 0);

        Row atLeast = low.row(new CentreAlong());
        Row atMost = high.row(new CentreAlong());

        assertThat(atLeast.sense()).isEqualTo(Row.Sense.AT_LEAST);
        assertThat(atLeast.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(atLeast.capacity()).isEqualTo(1500.0);
        assertThat(atMost.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(atMost.excess()).isCloseTo(100, within(1e-9));
        assertThat(atMost.finding()).contains("may lie at most 1400 mm");
    }

    @Test
    void theTankThatIsWorseGovernsAndIsNamed() {
        // given 100 kg at 500 mm and a tank of up to 100 kg at 2500 mm
        Tank tank = new Tank("water", Point.ofMm(500, 500, 500), 0, 100);
        Rig rig = window(0, 1200)
                .cube("one", 100, 0, 0, 0)
                .put("sink", Rig.item("sink", CUBE, Rig.mass(0, 500, 500, 500), tank), Rig.at(2000, 0, 0), null);

        Row row = rig.row(new CentreAlong());

        assertThat(row.finding()).startsWith("The centre of mass lies 500 to 1500 mm");
        assertThat(row.state()).isEqualTo("on the road, water of Sink full");
        assertThat(row.excess()).isCloseTo(300, within(1e-9));
    }

    @Test
    void anUncertainCentreLiesOnItsWorseSide() {
        MassData data = new MassData(100.0, Point.ofMm(500, 500, 500), MassBasis.WEIGHED, null, null, 40_000);
        Rig rig = window(400, 600).put("box", Rig.item("box", CUBE, data), Rig.at(0, 0, 0), null);

        Row row = rig.row(new CentreAlong());

        assertThat(row.demand()).isCloseTo(40, within(1e-9));
        assertThat(row.nominal()).isCloseTo(0, within(1e-9));
    }

    @Test
    void whereAUnitStandsOnTheRoadCounts() {
        Rig rig = window(0, 1000)
                .put("box", Rig.item("box", CUBE, Rig.mass(100, 500, 500, 500)), Rig.at(3000, 0, 0), Rig.at(0, 0, 0));

        assertThat(rig.row(new CentreAlong()).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void acrossIsHeldFromTheMiddlePlane() {
        Row row = new Rig()
                .limit(Figure.CENTRE_Y_OFF, 150)
                .cube("one", 100, 0, 0, 0)
                .cube("two", 300, 2000, 1000, 0)
                .row(new CentreAcross());

        assertThat(row.demand()).isCloseTo(250, within(1e-9));
        assertThat(row.capacity()).isCloseTo(150, within(1e-9));
        assertThat(row.finding()).endsWith("850 to 1150 mm: 100 mm too far to the left.");
        assertThat(row.mend()).isEqualTo("Move mass to the right: Two alone would do it with 133 mm.");
    }

    @Test
    void heightIsHeldAboveTheFloor() {
        Row row = new Rig()
                .limit(Figure.CENTRE_Z_HIGH, 1000)
                .cube("one", 100, 0, 0, 0)
                .cube("two", 100, 2000, 0, 1000)
                .row(new CentreHeight());

        assertThat(row.demand()).isCloseTo(1000, within(1e-9));
        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
    }

    @Test
    void withoutWindowNothingIsAssessedButTheCentreIsTold() {
        Rig rig = new Rig().cube("one", 100, 0, 0, 0);

        for (Limit limit : new Limit[] {new CentreAlong(), new CentreAcross(), new CentreHeight()}) {
            Row row = rig.row(limit);
            assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(row.finding()).contains("The centre of mass lies 500 to 500 mm");
        }
    }

    @Test
    void aCentreThatIsNotStatedMakesItNotAssessed() {
        MassData data = new MassData(10.0, null, MassBasis.WEIGHED, null, null, null);
        Rig rig = window(0, 1000).put("box", Rig.item("box", CUBE, data), Rig.at(0, 0, 0), null);

        Row row = rig.row(new CentreAlong());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding()).isEqualTo("Box has no centre of mass. Give centre in item box.");
        assertThat(rig.bodyRating(100).row(new BodyGrossMass()).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void gapsAreListedOneByOne() {
        MassData none = new MassData(null, null, MassBasis.WEIGHED, null, null, null);
        Rig rig = new Rig()
                .put("box", Rig.item("box", CUBE, none), Rig.at(0, 0, 0), null)
                .put("rack", Rig.item("rack", CUBE, none), Rig.at(1000, 0, 0), null);

        assertThat(rig.rows(new DataGaps()))
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED))
                .extracting(row -> row.units().get(0))
                .containsExactly("box", "rack");
        assertThat(rig.bodyRating(100).row(new BodyGrossMass()).finding())
                .isEqualTo("Box has no mass. Give massKg in item box. (and 1 gap more)");
        assertThat(new Rig().cube("one", 1, 0, 0, 0).row(new DataGaps()).finding())
                .isEqualTo("Every mass and centre of mass is stated.");
    }

    private static Rig window(int low, int high) {
        return new Rig().limit(Figure.CENTRE_X_LOW, low).limit(Figure.CENTRE_X_HIGH, high);
    }
}
