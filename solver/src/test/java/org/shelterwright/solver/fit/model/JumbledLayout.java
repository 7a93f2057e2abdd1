package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.item.Support;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/** A layout of units of every sort, thrown about at random: nothing in it need hold. */
public final class JumbledLayout {
    private static final int LENGTH = 3000;
    private static final int WIDTH = 2000;
    private static final int HEIGHT = 2000;

    private final SplittableRandom random;
    private final Layout layout;

    /** As many units as asked, in a body with wheel arches and one exit, under no rules but that plugs take room. */
    public JumbledLayout(long seed, int units) {
        this(seed, units, true, Map.of("cables.plug-depth", 25.0, "cables.plug-width", 30.0));
    }

    /**
     * A layout under rules.
     *
     * @param arches whether the body has wheel arches; without them it has a second exit
     * @param rules figures of the brief
     */
    public JumbledLayout(long seed, int units, boolean arches, Map<String, Double> rules) {
        random = new SplittableRandom(seed);
        Map<String, Item> items = new LinkedHashMap<>();
        List<UnitSpec> specs = new ArrayList<>();
        for (int i = 0; i < units; i++) {
            Item item = item("item-" + i, i);
            items.put(item.id(), item);
            specs.add(new UnitSpec("unit-" + i, "Unit " + i, item.id(), "jumble"));
        }
        Brief brief = Brief.named("jumble", "Jumble", "body")
                .units(specs)
                .limits(rules)
                .wires(wires(units))
                .build();
        Layout empty = Layout.empty(brief, new Parts(body(arches), null, null, items));
        Map<String, Placement> placements = new LinkedHashMap<>();
        for (UnitSpec spec : specs) {
            placements.put(spec.id(), place(empty, spec));
        }
        layout = empty.withPlacements(placements);
    }

    /** Every second unit is wired to the next. */
    private static List<Wire> wires(int units) {
        List<Wire> wires = new ArrayList<>();
        for (int i = 1; i < units; i += 2) {
            wires.add(new Wire("wire-" + i, "unit-" + (i - 1) + "/P1", "unit-" + i + "/P1", "any cable", null));
        }
        return wires;
    }

    public Layout layout() {
        return layout;
    }

    /** Any unit at another place. */
    public Placement move() {
        List<UnitSpec> units = layout.brief().units();
        return place(layout, units.get(random.nextInt(units.size())));
    }

    private Placement place(Layout of, UnitSpec spec) {
        Item item = of.item(spec);
        boolean onTable = item.mounting().surfaces().contains(Surface.ON_UNIT) && random.nextBoolean();
        Place station = onTable ? place(Surface.ON_UNIT, "unit-0") : place(Surface.FLOOR, null);
        Place road = item.mounting().loose() ? place(Surface.FLOOR, null) : null;
        return new Placement(spec.id(), station, road, Pin.NONE);
    }

    private Place place(Surface surface, @org.jspecify.annotations.Nullable String host) {
        int x = 25 * random.nextInt(-8, LENGTH / 25);
        int y = 25 * random.nextInt(-8, WIDTH / 25);
        int z = random.nextInt(3) == 0 ? 25 * random.nextInt(-2, HEIGHT / 25) : 0;
        QuarterTurn turn = QuarterTurn.values()[random.nextInt(4)];
        return new Place(surface, host, new Pose(Point.ofMm(x, y, z), turn));
    }

    private Item item(String id, int number) {
        int depth = 100 * random.nextInt(3, 9);
        int width = 100 * random.nextInt(3, 10);
        int height = 100 * random.nextInt(3, 16);
        boolean loose = number % 3 == 2;
        boolean guest = number % 4 == 1;
        List<Solid> solids = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            solids.add(new Solid("s" + i, within(depth, width, height), Presence.values()[random.nextInt(3)]));
        }
        if (!solids.isEmpty()) {
            solids.add(new Solid("base", Box.ofMm(0, 0, 0, depth, width, 100), Presence.ALWAYS));
        }
        List<ClearZone> zones = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            Purpose purpose = Purpose.values()[random.nextInt(5)];
            zones.add(new ClearZone("z" + i, purpose, beside(depth, width, height), Presence.values()[i - 1]));
        }
        List<MovablePart> parts = random.nextInt(3) > 0
                ? List.of()
                : List.of(new MovablePart(
                        "door", MovablePart.Kind.values()[random.nextInt(5)], beside(depth, width, height), "latch"));
        return Item.named(
                        id,
                        id,
                        number % 5 == 3 ? ItemKind.SEAT : ItemKind.CABINET,
                        Material.STEEL,
                        Size.ofMm(depth, width, height),
                        new Mounting(
                                guest ? Set.of(Surface.FLOOR, Surface.ON_UNIT) : Set.of(Surface.FLOOR),
                                null,
                                null,
                                loose),
                        MassData.of(50, Point.ofMm(depth / 2, width / 2, height / 2), MassBasis.WEIGHED))
                .solids(solids)
                .zones(zones)
                .movableParts(parts)
                .fixings(loose ? List.of() : fixings(depth, width))
                .supports(
                        number == 0
                                ? List.of(new Support(
                                        "top", Rect.ofMm(-900, -900, 1900, 1900), height * Lengths.MM, false, 75.0))
                                : List.of())
                .ports(List.of(new Port(
                        "P1", Point.ofMm(0, 0, height - 100), Face.FRONT, CableClass.values()[0], "any connector")))
                .build();
    }

    private Box within(int depth, int width, int height) {
        int x = 50 * random.nextInt(depth / 50 - 1);
        int y = 50 * random.nextInt(width / 50 - 1);
        int z = 50 * random.nextInt(height / 50 - 1);
        return Box.ofMm(
                x,
                y,
                z,
                x + 50 + random.nextInt(depth - x - 49),
                y + 50 + random.nextInt(width - y - 49),
                z + 50 + random.nextInt(height - z - 49));
    }

    private Box beside(int depth, int width, int height) {
        int reach = 100 * random.nextInt(1, 8);
        return random.nextBoolean()
                ? Box.ofMm(depth, 0, 0, depth + reach, width, height)
                : Box.ofMm(-50, width - 100, 50, depth, width + reach, height + 50);
    }

    private static List<Fixing> fixings(int depth, int width) {
        return List.of(
                new Fixing("F1", Point.ofMm(50, 50, 0), Face.BOTTOM, "M10", null, null),
                new Fixing("F2", Point.ofMm(depth - 50, width - 50, 0), Face.BOTTOM, "M10", null, null));
    }

    private static Body body(boolean arches) {
        Size inside = Size.ofMm(LENGTH, WIDTH, HEIGHT);
        HoleGrid grid = new HoleGrid(
                "inserts",
                Face.BOTTOM,
                Point.ORIGIN,
                Axis.X,
                25 * Lengths.MM,
                LENGTH / 25 + 1,
                25 * Lengths.MM,
                WIDTH / 25 + 1,
                List.of(),
                new Strength(null, null, null));
        Opening door = new Opening(
                "door",
                Opening.Kind.DOOR,
                Face.REAR,
                Box.ofMm(0, 600, 0, 0, 1400, 1900),
                true,
                Box.ofMm(0, 600, 0, 800, 1400, 1900));
        Opening hatch = new Opening(
                "hatch",
                Opening.Kind.HATCH,
                Face.LEFT,
                Box.ofMm(1000, WIDTH, 500, 1900, WIDTH, 1200),
                !arches,
                Box.ofMm(1000, WIDTH - 300, 500, 1900, WIDTH, 1200));
        return new Body(
                "body",
                "Body",
                inside,
                inside.box().grown(50_000, 50_000, 50_000),
                arches
                        ? List.of(
                                new Intrusion("left arch", Box.ofMm(1000, WIDTH - 300, 0, 1900, WIDTH, 300)),
                                new Intrusion("right arch", Box.ofMm(1000, 0, 0, 1900, 300, 300)))
                        : List.of(),
                List.of(door, hatch),
                List.of(grid),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                MassData.of(800, inside.box().centre(), MassBasis.WEIGHED),
                null,
                null);
    }
}
