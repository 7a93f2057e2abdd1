package org.shelterwright.layouts.rig;

import java.util.List;
import java.util.Random;
import org.shelterwright.catalog.carrier.Carrier.Kind;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.rules.Figure;

/** Random rigs from a seed: a truck with tanks and crew, mostly with a trailer, units with tanks, some stowed elsewhere. */
public final class RandomRig {
    private final Random random;

    private RandomRig(long seed) {
        random = new Random(seed);
    }

    public static Rig of(long seed, int units) {
        return new RandomRig(seed).build(units);
    }

    private Rig build(int units) {
        Rig rig = new Rig()
                .limit(Figure.GROWTH_ESTIMATED, 0.2)
                .limit(Figure.UNCERTAINTY_ESTIMATED, 0.1)
                .limit(Figure.UNCERTAINTY_WEIGHED, 0.01)
                .bodyRating(6000)
                .tare(new MassData(
                        between(800, 1500),
                        Point.ofMm(whole(1500, 2500), 1000, 900),
                        MassBasis.ESTIMATED,
                        null,
                        null,
                        null))
                .carrier(truck().build())
                .crew(random.nextInt(3));
        if (random.nextInt(4) > 0) {
            rig.trailer(TestCarrier.centreAxleTrailer()
                    .tank("trailer fuel", whole(-800, 800), whole(-500, 500), 700, 5, between(20, 120))
                    .build());
            rig.load("generator", item("generator", 0), new Pose(Point.ofMm(whole(-700, 300), -400, 600), turn()));
        }
        for (int i = 0; i < units; i++) {
            Place road = random.nextInt(4) == 0 ? place() : null;
            rig.put("unit-" + i, item("item-" + i, random.nextInt(3) == 0 ? 1 : 0), place(), road);
        }
        return rig;
    }

    private TestCarrier truck() {
        TestCarrier truck = TestCarrier.of(Kind.TRUCK).bodyAt(whole(-5500, -4500), -1000, 1200);
        truck.axle(0, 2000, between(2500, 3500), 6000.0, 1);
        truck.axle(-4000, 1850, between(1500, 2500), 9000.0, 2);
        truck.coupling(-5200, 600, 200.0, null, 3500.0).gross(14_000).combination(16_000);
        truck.tank("fuel", whole(-2000, -1000), whole(-1000, 1000), 600, between(0, 20), between(50, 200));
        return truck.seat(whole(0, 800), 500, 1500).seat(whole(0, 800), -500, 1500);
    }

    private Item item(String id, int tanks) {
        int x = whole(200, 1000);
        int y = whole(200, 800);
        int z = whole(200, 1800);
        MassData mass = new MassData(
                between(5, 300),
                Point.ofMm(whole(0, x), whole(0, y), whole(0, z)),
                random.nextBoolean() ? MassBasis.ESTIMATED : MassBasis.WEIGHED,
                random.nextBoolean() ? random.nextDouble() * 0.3 : null,
                random.nextBoolean() ? between(0, 5) : null,
                random.nextBoolean() ? whole(0, 50) * 1000 : null);
        Tank tank = new Tank("water", Point.ofMm(x / 2, y / 2, whole(0, z)), between(0, 5), between(5, 80));
        return Rig.item(id, Size.ofMm(x, y, z), mass, List.of(), tanks == 0 ? new Tank[0] : new Tank[] {tank});
    }

    private Place place() {
        return Place.onFloor(new Pose(Point.ofMm(whole(0, 3000), whole(0, 1000), whole(0, 200)), turn()));
    }

    private QuarterTurn turn() {
        return QuarterTurn.values()[random.nextInt(4)];
    }

    private int whole(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }
}
