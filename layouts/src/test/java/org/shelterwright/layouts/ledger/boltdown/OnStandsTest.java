package org.shelterwright.layouts.ledger.boltdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.body.Provision.Use;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;

/** An empty body of 1000 kg with its centre in the middle of stands at x 500 and 3500, y 600 and 1400 mm. */
class OnStandsTest {
    private static Rig body(Use use) {
        Rig rig = new Rig().tare(Rig.mass(1000, 2000, 1000, 500));
        for (int x : new int[] {500, 3500}) {
            for (int y : new int[] {600, 1400}) {
                rig.provision(new Provision("foot " + x + " " + y, use, Point.ofMm(x, y, -100), null));
            }
        }
        return rig;
    }

    private static Row row(Rig rig, String... order) {
        var layout = rig.layout().withBoltDown(BoltDownOrder.of(List.of(order)));
        Scene scene = Scene.of(layout, Rules.of(layout.brief(), List.of()));
        return LedgerBuilder.full(new LimitBook(List.of(new OnStands())), scene)
                .rows()
                .get(0);
    }

    /** 1000 kg at x 3500 bring the centre half of the 1500 mm ahead; as much at x 500 brings it back (by hand). */
    @Test
    void theStepAtWhichTheCentreIsFarthestOffIsNamed() {
        Rig rig = body(Use.STAND).cube("front", 1000, 3000, 500, 0).cube("rear", 1000, 0, 500, 0);

        Row frontFirst = row(rig, "front", "rear");
        Row rearFirst = row(rig, "rear", "front");

        assertThat(frontFirst.demand()).isEqualTo(750.0);
        assertThat(frontFirst.capacity()).isEqualTo(1500.0);
        assertThat(frontFirst.verdict()).isEqualTo(Verdict.MET);
        assertThat(frontFirst.mend()).isNull();
        assertThat(frontFirst.finding())
                .isEqualTo("At worst the centre of mass lies 750 mm before or behind the middle of the stands (after"
                        + " Front); they reach 1500 mm.");
        assertThat(rearFirst.state()).isEqualTo("after Rear");
    }

    @Test
    void theEmptyBodyCountsToo() {
        Rig rig = body(Use.STAND).tare(Rig.mass(1000, 2000, 1100, 500)).cube("load", 1000, 1500, 500, 0);

        Row row = row(rig, "load");

        assertThat(row.state()).isEqualTo("empty");
        assertThat(row.demand()).isCloseTo(100, within(1e-9));
    }

    @Test
    void aCentreOverTheLineOfTwoStandsIsCloseAndOneBeyondItIsBroken() {
        // given as much mass as the body has, 800 mm beside the middle: 400 mm together, as far as the stands reach
        Row exact = row(body(Use.STAND).cube("load", 1000, 1500, 1300, 0), "load");
        Row beyond = row(body(Use.STAND).cube("load", 1000, 1500, 1302, 0), "load");

        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(beyond.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(beyond.finding())
                .isEqualTo("At worst the centre of mass lies 401 mm beside the middle of the stands (after Load); they"
                        + " reach 400 mm.");
        assertThat(beyond.mend()).isEqualTo("Change the order, or prop the body.");
    }

    @Test
    void withoutPadsTheLowestFittingsForLashingCarryAndForkPocketsNever() {
        Rig rig = body(Use.TIE_DOWN)
                .provision(new Provision("pocket 1", Use.FORK_POCKET, Point.ofMm(1000, -50, -100), null))
                .provision(new Provision("pocket 2", Use.FORK_POCKET, Point.ofMm(3000, -50, -100), null))
                .provision(new Provision("high", Use.BOTH, Point.ofMm(0, 0, 2000), null))
                .cube("load", 1000, 1500, 1300, 0);
        Rig pads = body(Use.STAND)
                .provision(new Provision("low", Use.TIE_DOWN, Point.ofMm(0, 0, -300), null))
                .cube("load", 1000, 1500, 1300, 0);

        assertThat(row(rig, "load").capacity()).isCloseTo(400, within(1e-9));
        assertThat(row(pads, "load").capacity()).isCloseTo(400, within(1e-9));
    }

    @Test
    void padsThatAreNotAtTheCornersOfARectangleAreNotAssessed() {
        // given three pads, four in a line, and four of which one stands in
        for (List<Point> pads : List.of(
                List.of(Point.ofMm(0, 0, 0), Point.ofMm(0, 2000, 0), Point.ofMm(4000, 0, 0)),
                List.of(Point.ofMm(0, 0, 0), Point.ofMm(1, 0, 0), Point.ofMm(2, 0, 0), Point.ofMm(3, 0, 0)),
                List.of(
                        Point.ofMm(0, 0, 0),
                        Point.ofMm(0, 2000, 0),
                        Point.ofMm(4000, 0, 0),
                        Point.ofMm(3000, 2000, 0)))) {
            Row row = row(standing(Use.STAND, pads), "load");

            assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(row.finding())
                    .isEqualTo("The pads for stands are not four at the corners of a level rectangle.");
            assertThat(row.mend()).isEqualTo("Give four pads for stands in body test-body.");
            assertThat(row(standing(Use.TIE_DOWN, pads), "load").doesNotApply())
                    .as("fittings for lashing are not meant to stand on")
                    .isTrue();
        }
    }

    private static Rig standing(Use use, List<Point> places) {
        Rig rig = new Rig().tare(Rig.mass(1000, 2000, 1000, 500)).cube("load", 1000, 1500, 500, 0);
        places.forEach(at -> rig.provision(new Provision("foot " + at, use, at, null)));
        return rig;
    }

    @Test
    void massesThatAreNotKnownAreNamed() {
        Row body = row(
                body(Use.STAND)
                        .tare(new MassData(null, null, MassBasis.WEIGHED, 0.0, 0.0, null))
                        .cube("load", 1000, 1500, 500, 0),
                "load");
        MassData unknown = new MassData(50.0, null, MassBasis.WEIGHED, 0.0, 0.0, null);
        Row unit = row(
                body(Use.STAND)
                        .put("load", Rig.item("load", Size.ofMm(500, 500, 500), unknown), Rig.at(1000, 500, 0), null),
                "load");

        assertThat(body.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(body.finding()).isEqualTo("The mass of the empty body is not known.");
        assertThat(unit.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(unit.finding()).isEqualTo("The mass or centre of Load is not known.");
    }
}
