package org.shelterwright.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.layout.Provenance;

/** An invented layout of sixteen units in a 4.2 m box body, for tests of documents. */
public final class TestLayout {

    private static final int LENGTH = 4200;
    private static final int WIDTH = 2100;
    private static final int HEIGHT = 2000;

    private final Map<String, Item> items = new LinkedHashMap<>();
    private final List<UnitSpec> units = new ArrayList<>();
    private final Map<String, Placement> placements = new LinkedHashMap<>();

    private TestLayout() {}

    /** The layout, with every unit placed. */
    public static Layout riverPost() {
        TestLayout test = new TestLayout();
        test.furnish();
        return test.layout();
    }

    private Layout layout() {
        Brief brief = Brief.named("river-post", "River Post", "box-4200")
                .units(units)
                .crew(2)
                .ruleSets(List.of("shelter-common"))
                .note("Invented for the Varn Valley Flood Service.")
                .build();
        return Layout.empty(brief, new Parts(body(), null, null, items))
                .withPlacements(placements)
                .withProvenance(new Provenance("Shelterwright 0.1.0", 4207L, 400_000L));
    }

    /** Small boxes in two tiers, so many that references need leaders. */
    public static Layout crowded(int count) {
        TestLayout test = new TestLayout();
        test.item(
                "box",
                ItemKind.CRATE,
                Material.WOOD,
                Size.ofMm(150, 150, 300),
                List.of(),
                List.of(),
                5.0,
                Surface.FLOOR);
        for (int i = 0; i < count; i++) {
            int place = i / 2;
            int x = 20 + place % 20 * 205;
            int y = place / 20 == 0 ? 10 + place % 3 * 200 : WIDTH - 160 - place % 4 * 160;
            test.unit("box-" + i, "Box " + (i + 1), "box", Place.onFloor(pose(x, y, i % 2 * 300, QuarterTurn.R90)));
        }
        return test.layout();
    }

    private void furnish() {
        left("waders", "Waders", ItemKind.STOWAGE_FRAME, Material.FABRIC, 500, 450, 1300, 34, 150, List.of());
        desk();
        left("rack-2", "Rack 2", ItemKind.RACK, Material.STEEL, 800, 600, 1800, 187, 2360, front(800, 600, 700));
        left("rack-1", "Rack 1", ItemKind.RACK, Material.STEEL, 800, 600, 1800, 212, 2998, front(800, 600, 700));
        left("battery", "Battery box", ItemKind.BATTERY_BOX, Material.PLASTIC, 600, 500, 450, 124, 3640, List.of());
        table("charts", "Charts", 550, 800, 680, 27, 350);
        right("winch", "Winch crate", ItemKind.CRATE, Material.WOOD, 500, 650, 450, 96, 1200, List.of());
        right("samples", "Samples", ItemKind.REFRIGERATOR, Material.PAINTED_SHEET, 550, 520, 820, 43, 1900, List.of());
        right("gauge-1", "Gauge 1", ItemKind.LOCKER, Material.PAINTED_SHEET, 550, 500, 760, 38, 2450, List.of());
        right("gauge-2", "Gauge 2", ItemKind.LOCKER, Material.PAINTED_SHEET, 550, 500, 760, 38, 2960, List.of());
        right("drying", "Drying", ItemKind.CUPBOARD, Material.PAINTED_SHEET, 600, 500, 1300, 61, 3560, List.of());
        item(
                "heater",
                ItemKind.HEATER,
                Material.ALUMINIUM,
                Size.ofMm(250, 400, 400),
                List.of(),
                List.of(),
                19.0,
                Surface.WALL);
        unit(
                "heater",
                "Heater",
                "heater",
                new Place(Surface.WALL, null, pose(LENGTH - 250, 900, 900, QuarterTurn.R180)));
        item(
                "cabinet",
                ItemKind.CABINET,
                Material.PAINTED_SHEET,
                Size.ofMm(200, 400, 350),
                List.of(),
                List.of(),
                6.0,
                Surface.WALL);
        unit(
                "first-aid",
                "First-aid cabinet",
                "cabinet",
                new Place(Surface.WALL, null, pose(1320, 0, 1200, QuarterTurn.R90)));
        item(
                "screen",
                ItemKind.SCREEN,
                Material.PLASTIC,
                Size.ofMm(160, 480, 360),
                List.of(),
                List.of(),
                null,
                Surface.ON_UNIT);
        unit(
                "screen-1",
                "Screen 1",
                "screen",
                new Place(Surface.ON_UNIT, "desk", pose(800, 1940, 740, QuarterTurn.R270)));
        unit(
                "screen-2",
                "Screen 2",
                "screen",
                new Place(Surface.ON_UNIT, "desk", pose(1560, 1940, 740, QuarterTurn.R270)));
    }

    private void desk() {
        Size size = Size.ofMm(700, 1600, 740);
        List<Solid> solids = List.of(
                solid("top", Box.ofMm(0, 0, 700, 700, 1600, 740)),
                solid("right end", Box.ofMm(0, 0, 0, 700, 40, 700)),
                solid("middle", Box.ofMm(0, 780, 0, 700, 820, 700)),
                solid("left end", Box.ofMm(0, 1560, 0, 700, 1600, 700)));
        List<ClearZone> zones = List.of(
                new ClearZone("work place 1", Purpose.SEAT, Box.ofMm(700, 60, 0, 1400, 760, 1900), Presence.ON_STATION),
                new ClearZone(
                        "work place 2", Purpose.SEAT, Box.ofMm(700, 840, 0, 1400, 1540, 1900), Presence.ON_STATION));
        item("desk", ItemKind.DESK, Material.WOOD, size, solids, zones, 48.0, Surface.FLOOR);
        unit("desk", "Desk", "desk", Place.onFloor(pose(700, WIDTH - 700, 0, QuarterTurn.R270)));
    }

    private void table(String id, String name, int depth, int width, int height, double mass, int x) {
        List<Solid> solids = List.of(
                solid("top", Box.ofMm(0, 0, height - 40, depth, width, height)),
                solid("right end", Box.ofMm(0, 0, 0, depth, 40, height - 40)),
                solid("left end", Box.ofMm(0, width - 40, 0, depth, width, height - 40)));
        item(
                id,
                ItemKind.TABLE,
                Material.WOOD,
                Size.ofMm(depth, width, height),
                solids,
                List.of(),
                mass,
                Surface.FLOOR);
        unit(id, name, id, Place.onFloor(pose(x, 0, 0, QuarterTurn.R90)));
    }

    private void left(
            String id,
            String name,
            ItemKind kind,
            Material material,
            int depth,
            int width,
            int height,
            double mass,
            int x,
            List<ClearZone> zones) {
        item(id, kind, material, Size.ofMm(depth, width, height), List.of(), zones, mass, Surface.FLOOR);
        unit(id, name, id, Place.onFloor(pose(x, WIDTH - depth, 0, QuarterTurn.R270)));
    }

    private void right(
            String id,
            String name,
            ItemKind kind,
            Material material,
            int depth,
            int width,
            int height,
            double mass,
            int x,
            List<ClearZone> zones) {
        item(id, kind, material, Size.ofMm(depth, width, height), List.of(), zones, mass, Surface.FLOOR);
        unit(id, name, id, Place.onFloor(pose(x, 0, 0, QuarterTurn.R90)));
    }

    private void item(
            String id,
            ItemKind kind,
            Material material,
            Size size,
            List<Solid> solids,
            List<ClearZone> zones,
            @Nullable Double mass,
            Surface surface) {
        Point centre = size.box().centre();
        items.put(
                id,
                Item.named(
                                id,
                                id.replace('-', ' '),
                                kind,
                                material,
                                size,
                                new Mounting(Set.of(surface), null, null, false),
                                new MassData(mass, mass == null ? null : centre, MassBasis.SUPPLIER, null, null, null))
                        .solids(solids)
                        .zones(zones)
                        .movableParts(parts(kind, size))
                        .build());
    }

    private static List<MovablePart> parts(ItemKind kind, Size size) {
        List<MovablePart> parts = new ArrayList<>();
        if (kind == ItemKind.LOCKER) {
            for (int i = 0; i < 3; i++) {
                parts.add(new MovablePart(
                        "drawer " + (i + 1),
                        MovablePart.Kind.DRAWER,
                        new Box(size.x(), 0, size.z() * i / 3, size.x() + 400_000, size.y(), size.z() * (i + 1) / 3),
                        "latch"));
            }
        }
        if (kind == ItemKind.REFRIGERATOR || kind == ItemKind.CUPBOARD || kind == ItemKind.CABINET) {
            parts.add(new MovablePart(
                    "door",
                    MovablePart.Kind.DOOR,
                    new Box(size.x(), 0, 0, size.x() + size.y(), size.y(), size.z()),
                    "latch"));
        }
        return parts;
    }

    private void unit(String id, String name, String item, Place place) {
        units.add(new UnitSpec(id, name, item, "equipment"));
        placements.put(id, new Placement(id, place, null, Pin.NONE));
    }

    private static List<ClearZone> front(int depth, int width, int clear) {
        return List.of(new ClearZone(
                "front service", Purpose.SERVICE, Box.ofMm(depth, 0, 0, depth + clear, width, 1900), Presence.ALWAYS));
    }

    private static Solid solid(String name, Box box) {
        return new Solid(name, box, Presence.ALWAYS);
    }

    private static Pose pose(int x, int y, int z, QuarterTurn turn) {
        return new Pose(Point.ofMm(x, y, z), turn);
    }

    private static Body body() {
        Strength strength = new Strength(8000.0, 9000.0, null);
        List<HoleGrid> rails = List.of(
                rail("rail 1", 140, strength),
                rail("rail 2", 760, strength),
                rail("rail 3", 1340, strength),
                rail("rail 4", 1960, strength));
        List<Opening> openings = List.of(
                new Opening("rear door", Opening.Kind.DOOR, Face.REAR, Box.ofMm(0, 480, 0, 0, 1330, 1850), true, null),
                new Opening(
                        "hatch",
                        Opening.Kind.HATCH,
                        Face.LEFT,
                        Box.ofMm(1000, WIDTH, 1250, 1700, WIDTH, 1750),
                        true,
                        null),
                new Opening(
                        "window",
                        Opening.Kind.WINDOW,
                        Face.RIGHT,
                        Box.ofMm(2000, 0, 1200, 2700, 0, 1600),
                        false,
                        null));
        return new Body(
                "box-4200",
                "Box body 4.2 m",
                Size.ofMm(LENGTH, WIDTH, HEIGHT),
                Box.ofMm(-60, -60, -100, LENGTH + 60, WIDTH + 60, HEIGHT + 60),
                List.of(),
                openings,
                rails,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                MassData.of(1450, Point.ofMm(2050, 1050, 900), MassBasis.WEIGHED),
                null,
                null);
    }

    private static HoleGrid rail(String name, int y, Strength strength) {
        return new HoleGrid(
                name,
                Face.BOTTOM,
                Point.ofMm(100, y, 0),
                Axis.X,
                100 * Lengths.MM,
                41,
                100 * Lengths.MM,
                1,
                List.of("M10"),
                strength);
    }
}
