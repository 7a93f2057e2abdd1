package org.shelterwright.layouts.ledger.transport.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.transit.Doorway;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.CarBuilder;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.TransportRig;

/** What stands within walls, roof and narrowing section, and passes the doors. */
class CarRoomTest {
    @Test
    void aCrateLargerThanTheDoorIsRefused() {
        TransportRig rig = new TransportRig()
                .on("container-1cc")
                .by(Mode.ROAD, "road-eu", "stowage-ctu")
                .crate("a", 0, 0, 0, 2_000, 2_250, 2_000, 500.0);

        Row row = rig.row("doorway");
        // 2 250 mm and 1.5 in (TB 11-5400-200-14) are more than 2 286 mm.
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.demand()).isCloseTo(2_250 + 38.1, within(1e-9));
        assertThat(row.finding())
                .isEqualTo("Crate a is 2250 mm wide; the rear door of the Container 20 ft, 1CC is 2286 mm wide.");
        assertThat(new TransportRig()
                        .on("container-1cc")
                        .by(Mode.ROAD, "road-eu", "stowage-ctu")
                        .crate("a", 0, 0, 0, 2_000, 2_247, 2_000, 500.0)
                        .row("doorway")
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
    }

    /** One micrometre is not to be had in whole millimetres: one millimetre beyond each side of an open deck of 18 500 x 2 740 mm. */
    @Test
    void aMillimetreBeyondTheDeckIsTold() {
        assertThat(inside(-1, 0, 1_000, 1_000)).contains(" reaches 1 mm lengthways ");
        assertThat(inside(17_501, 0, 1_000, 1_000)).contains(" reaches 1 mm lengthways ");
        assertThat(inside(0, -1, 1_000, 1_000)).contains(" reaches 1 mm sideways ");
        assertThat(inside(0, 1_741, 1_000, 1_000)).contains(" reaches 1 mm sideways ");
        assertThat(inside(0, 0, 18_500, 2_740)).isEqualTo("Everything stands within its car.");
    }

    private static String inside(int x, int y, int dx, int dy) {
        return new TransportRig()
                .crate("a", x, y, 0, dx, dy, 1_000, 1_000.0)
                .row("inside-car")
                .finding();
    }

    @Test
    void underARoofAllOfAPieceIsInside() {
        Row high = boxed(2_500);

        assertThat(high.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(high.finding()).contains(" upwards out of the Container 20 ft, 1CC of Car.");
        assertThat(boxed(2_000).verdict()).isEqualTo(Verdict.MET);
    }

    private static Row boxed(int dz) {
        return new TransportRig()
                .on("container-1cc")
                .by(Mode.ROAD, "road-eu", "stowage-ctu")
                .crate("a", 0, 0, 0, 1_000, 1_000, dz, 100.0)
                .row("inside-car");
    }

    /** TB 11-5400-200-14 (seen): an opening is at least 2 in higher than what passes. */
    @Test
    void theHeightOfADoorCountsToo() {
        Row row = new TransportRig()
                .on("container-1cc")
                .by(Mode.ROAD, "road-eu", "stowage-ctu")
                .crate("a", 0, 0, 0, 2_000, 1_000, 2_250, 500.0)
                .row("doorway");

        assertThat(row.demand()).isCloseTo(2_250 + 50.8, within(1e-9));
        assertThat(row.finding()).startsWith("Crate a is 2250 mm high; the rear door of the Container 20 ft, 1CC is ");
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
    }

    /**
     * A hold 3 050 mm wide up to 2 000 mm, from there narrowing to 2 500 mm at 2 700 mm: at 2 350 mm half of it is 1 387.5 mm
     * (by hand), so that between y = 137.5 and 2 912.5 mm is room.
     */
    @Test
    void whereAHoldNarrowsTheUpperEdgesCount() {
        assertThat(held(138, 2_774, 2_350).verdict()).isEqualTo(Verdict.MET);
        assertThat(held(137, 2_774, 2_350).finding()).contains(" reaches 0.5 mm sideways ");
        assertThat(held(139, 2_774, 2_350).finding()).contains(" reaches 0.5 mm sideways ");
        assertThat(held(0, 3_050, 2_000).verdict()).isEqualTo(Verdict.MET);
        assertThat(held(0, 3_050, 2_010).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(held(500, 1_000, 2_701).finding()).contains(" reaches 1 mm upwards ");
    }

    private static Row held(int y, int dy, int dz) {
        return new TransportRig()
                .on("hold-medium")
                .by(Mode.AIR, "air-14-cfr-25")
                .crate("a", 1_000, y, 0, 500, dy, dz, 100.0)
                .row("inside-car");
    }

    @Test
    void ofSeveralDoorsTheOneCountsThatIsPassedBest() {
        TransitCar car = twoDoors();

        // 1 900 mm across and 2 200 mm along: the side door of 2 400 mm is passed lengthways, the end door of 1 800 mm
        // not.
        assertThat(through(car, 2_200, 1_900).verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(through(car, 2_200, 1_900).finding())
                .isEqualTo("Crate a is 2200 mm wide; the side door of the Plain car is 2400 mm wide.");
        assertThat(through(car, 3_000, 1_700).finding())
                .isEqualTo("Crate a is 1700 mm wide; the end door of the Plain car is 1800 mm wide.");
        assertThat(through(car, 3_000, 1_900).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(through(car, 3_000, 1_900).mend()).isNotNull();
        assertThat(through(car, 3_000, 1_900).finding()).contains("the end door");
    }

    private static Row through(TransitCar car, int dx, int dy) {
        return new TransportRig()
                .on(car)
                .by(Mode.ROAD, "road-eu", "stowage-ctu")
                .crate("a", 0, 0, 0, dx, dy, 1_000, 500.0)
                .row("doorway");
    }

    private static TransitCar twoDoors() {
        return CarBuilder.like(TransportRig.plainCar(8_000, 2_500, null))
                .doorways(List.of(
                        new Doorway("end door", Face.REAR, 1_800_000, 2_300_000),
                        new Doorway("side door", Face.LEFT, 2_400_000, 2_300_000)))
                .build();
    }
}
