package org.shelterwright.layouts.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Random layouts of composite units on the floor, on walls, under the roof, on and under each other, with zones, movable
 * parts and road places; and random moves in them. Most break some limits: what matters is that all kinds occur.
 */
public final class RandomScenes {
    private static final int X = 4200;
    private static final int Y = 2100;
    private static final int Z = 2000;

    private final Random random;

    public RandomScenes(long seed) {
        random = new Random(seed);
    }

    public Scene scene(int units) {
        Trial trial = Trial.in(body())
                .rules(road())
                .limit(Figure.WALKWAY_WIDTH, 500)
                .limit(Figure.WALKWAY_HEADROOM, 1900)
                .limit(Figure.STEP_HEIGHT, 50)
                .limit(Figure.EXIT_WIDTH, 600)
                .limit(Figure.EXIT_COUNT, 2)
                .limit(Figure.SEAT_HEADROOM, 1400)
                .limit(Figure.REACH_HIGHEST, 1800);
        List<TrialItem> items = items();
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < units; i++) {
            String id = "u" + i;
            trial.put(
                    id,
                    items.get(random.nextInt(items.size())),
                    place(id, ids, List.of()),
                    random.nextInt(4) == 0 ? place(id, ids, List.of()) : null,
                    Pin.NONE);
            ids.add(id);
        }
        return trial.scene();
    }

    /** Another place for one unit: shifted a little, turned, or somewhere else, on any surface or host. */
    public Placement move(Scene scene) {
        PlacedUnit unit = scene.units().get(random.nextInt(scene.units().size()));
        Placement placement = unit.placement();
        if (random.nextInt(4) == 0) {
            boolean road = placement.road() == null || random.nextBoolean();
            return placement.withRoad(road ? place(unit.id(), ids(scene), scene.units()) : null);
        }
        if (random.nextInt(3) == 0) {
            return placement.withStation(place(unit.id(), ids(scene), scene.units()));
        }
        Place station = placement.station();
        Pose pose = station.pose().moved(Point.ofMm(step(), step(), random.nextInt(8) == 0 ? step() : 0));
        QuarterTurn turn = random.nextInt(6) == 0 ? QuarterTurn.R90 : QuarterTurn.R0;
        return placement.withStation(station.with(new Pose(pose.at(), pose.yaw().plus(turn))));
    }

    private int step() {
        return 50 * (random.nextInt(9) - 4);
    }

    private static List<String> ids(Scene scene) {
        return scene.units().stream().map(PlacedUnit::id).toList();
    }

    private Place place(String id, List<String> hosts, List<PlacedUnit> placed) {
        QuarterTurn turn = QuarterTurn.values()[random.nextInt(4)];
        int x = 50 * random.nextInt(X / 50);
        int y = 50 * random.nextInt(Y / 50);
        int kind = random.nextInt(10);
        if (kind < 3 && !hosts.isEmpty()) {
            String host = hosts.get(random.nextInt(hosts.size()));
            if (!host.equals(id)) {
                return hosted(host, placed, turn, kind == 0);
            }
        }
        return switch (kind) {
            case 3 -> Trial.at(Surface.WALL, 0, y, 50 * random.nextInt(Z / 50), QuarterTurn.R0);
            case 4 -> Trial.at(Surface.ROOF, x, y, Z - 200, turn);
            default -> Trial.onFloor(x, y, turn);
        };
    }

    private Place hosted(String host, List<PlacedUnit> placed, QuarterTurn turn, boolean under) {
        Point at = Point.ofMm(50 * random.nextInt(X / 50), 50 * random.nextInt(Y / 50), 750);
        for (PlacedUnit unit : placed) {
            if (unit.id().equals(host)) {
                Point low = unit.placement().station().pose().at();
                at = low.plus(Point.ofMm(50 * random.nextInt(8), 50 * random.nextInt(8), under ? 120 : 750));
            }
        }
        return new Place(under ? Surface.UNDER_UNIT : Surface.ON_UNIT, host, new Pose(at, turn));
    }

    private static RuleSet road() {
        return RuleSets.builtIn().stream()
                .filter(set -> set.id().equals("road-eu"))
                .map(set -> new RuleSet(set.id(), set.name(), null, List.of(), set.loadCases()))
                .findFirst()
                .orElseThrow();
    }

    private static TrialBody body() {
        Strength strength = new Strength(3000.0, 4000.0, 5000.0);
        return TrialBody.of(X, Y, Z)
                .intrusion("right wheel arch", Box.ofMm(800, 0, 0, 1700, 250, 300))
                .intrusion("left wheel arch", Box.ofMm(800, Y - 250, 0, 1700, Y, 300))
                .rearDoor(600, 1400)
                .opening(
                        "side door",
                        Opening.Kind.DOOR,
                        Face.RIGHT,
                        Box.ofMm(3000, 0, 0, 3700, 0, 1900),
                        true,
                        Box.ofMm(3000, 0, 0, 3700, 700, 1900))
                .floorGrid()
                .grid("wall rail", Face.REAR, Point.ofMm(0, 100, 900), Axis.Y, 50, 38, 1, strength)
                .grid("roof rail", Face.TOP, Point.ofMm(100, 500, Z), Axis.X, 50, 80, 2, strength);
    }

    private static List<TrialItem> items() {
        return List.of(
                TrialItem.of("rack", 800, 600, 1800)
                        .zone(Purpose.SERVICE, Box.ofMm(800, 0, 0, 1500, 600, 1900))
                        .movable("door", MovablePart.Kind.DOOR, Box.ofMm(800, 0, 100, 1400, 600, 1700), "latch")
                        .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10")
                        .fixing(Point.ofMm(750, 50, 0), Face.BOTTOM, "M10")
                        .fixing(Point.ofMm(50, 550, 0), Face.BOTTOM, "M10")
                        .fixing(Point.ofMm(750, 550, 0), Face.BOTTOM, "M10")
                        .port("mains", Point.ofMm(0, 300, 1700))
                        .support("top", Rect.ofMm(0, 0, 800, 600), 1800, false, 40.0),
                TrialItem.of("table", 700, 1200, 750)
                        .solid(Box.ofMm(0, 0, 720, 700, 1200, 750))
                        .solid(Box.ofMm(0, 0, 0, 700, 50, 720))
                        .solid(Box.ofMm(0, 1150, 0, 700, 1200, 720), Presence.ON_STATION)
                        .zone(Purpose.SEAT, Box.ofMm(700, 300, 0, 1400, 900, 1350))
                        .zone(Purpose.SERVICE, Box.ofMm(0, 0, 750, 700, 1200, 1200))
                        .movable("drawer", MovablePart.Kind.DRAWER, Box.ofMm(700, 0, 500, 1100, 300, 700), null)
                        .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10")
                        .fixing(Point.ofMm(650, 50, 0), Face.BOTTOM, "M10")
                        .fixing(Point.ofMm(50, 1150, 0), Face.BOTTOM, "M10")
                        .fixing(Point.ofMm(650, 1150, 0), Face.BOTTOM, "M10")
                        .support("top", Rect.ofMm(0, 0, 700, 1200), 750, false, 60.0)
                        .support("under", Rect.ofMm(0, 50, 700, 1150), 720, true, 30.0),
                TrialItem.of("cabinet", 300, 600, 500)
                        .on(Surface.WALL, Surface.ON_UNIT)
                        .wallHeights(700, 1400)
                        .movable("lid", MovablePart.Kind.LID, Box.ofMm(300, 0, 0, 700, 600, 500), "catch")
                        .fixing(Point.ofMm(0, 50, 450), Face.REAR, "M10")
                        .fixing(Point.ofMm(0, 550, 450), Face.REAR, "M10")
                        .fixing(Point.ofMm(150, 300, 0), Face.BOTTOM, "M10"),
                TrialItem.of("lamp", 600, 150, 200)
                        .on(Surface.ROOF)
                        .fixing(Point.ofMm(100, 50, 200), Face.TOP, "M10")
                        .fixing(Point.ofMm(500, 50, 200), Face.TOP, "M10"),
                TrialItem.of("crate", 600, 400, 300)
                        .on(Surface.FLOOR, Surface.ON_UNIT)
                        .stacking(50),
                TrialItem.of("pedestal", 500, 400, 600)
                        .on(Surface.UNDER_UNIT, Surface.FLOOR)
                        .mass(15.0, null),
                TrialItem.of("locker", 450, 900, 1700)
                        .bolted()
                        .turns(QuarterTurn.R0, QuarterTurn.R180)
                        .zone(Purpose.EXIT, Box.ofMm(450, 0, 0, 1050, 900, 1700))
                        .mass(null, null)
                        .support("top", Rect.ofMm(0, 0, 450, 900), 1700, false, null),
                TrialItem.of("chair", 450, 450, 900)
                        .kind(ItemKind.SEAT)
                        .zone(Purpose.AIR, Box.ofMm(0, 0, 900, 450, 450, 1000)));
    }
}
