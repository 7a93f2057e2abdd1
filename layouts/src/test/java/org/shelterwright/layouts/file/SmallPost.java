package org.shelterwright.layouts.file;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.brief.Wish;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.layout.Provenance;

/** A small invented layout: two racks, a table, a printer on the table, a lamp on the printer's side, a generator. */
public final class SmallPost {
    private SmallPost() {}

    public static Item item(String id, String size, String more) {
        String text = """
                {"format": "shelterwright-item", "version": 1, "id": "%s", "name": "%s", "kind": "other",
                 "material": "steel", "size": %s, "mass": {"massKg": 40, "basis": "estimated"}, %s}
                """.formatted(id, id, size, more);
        return CatalogFormats.ITEM.read(text.getBytes(StandardCharsets.UTF_8), id + ".json");
    }

    public static final Item RACK = item("rack", "[800, 600, 1800]", """
            "mounting": {"surfaces": ["floor"]},
            "fixings": [{"name": "F1", "at": [50, 50, 0], "face": "bottom", "thread": "M10"}],
            "ports": [{"name": "power", "at": [0, 300, 100], "face": "rear", "cableClass": "power", "connector": "C20"}]
            """);
    public static final Item TABLE = item("table", "[700, 1200, 740]", """
            "mounting": {"surfaces": ["floor", "wall"]},
            "solids": [{"name": "top", "box": {"from": [0, 0, 700], "to": [700, 1200, 740]}, "presence": "always"}],
            "supports": [{"name": "top", "area": {"from": [0, 0], "to": [700, 1200]}, "height": 740}]
            """);
    public static final Item PRINTER = item("printer", "[400, 500, 300]", """
            "mounting": {"surfaces": ["on-unit"], "loose": true},
            "supports": [{"name": "lid", "area": {"from": [0, 0], "to": [400, 500]}, "height": 300}],
            "ports": [{"name": "power", "at": [0, 0, 0], "face": "rear", "cableClass": "power", "connector": "C14"}]
            """);
    public static final Item TRAY =
            item("tray", "[200, 300, 260]", "\"mounting\": {\"surfaces\": [\"on-unit\"], \"loose\": true}");
    public static final Item GENERATOR =
            item("generator", "[900, 700, 800]", "\"mounting\": {\"surfaces\": [\"floor\"]}");

    public static final Body BODY = CatalogFormats.BODY.read("""
            {"format": "shelterwright-body", "version": 1, "id": "box", "name": "Box", "inside": [4000, 2200, 2000],
             "outside": {"from": [-60, -60, -150], "to": [4060, 2260, 2060]},
             "openings": [{"name": "door", "kind": "door", "wall": "rear", "exit": true,
                           "area": {"from": [0, 700, 0], "to": [0, 1500, 1900]}}],
             "grids": [{"name": "rail 1", "surface": "bottom", "first": [50, 100, 0], "along": "x", "pitch": 25,
                        "count": 150, "rowPitch": 500, "rows": 5, "threads": ["M10"], "strength": {"shearN": 9000}}],
             "entryPanels": [{"name": "panel 1", "wall": "rear", "places": 6,
                              "area": {"from": [0, 1700, 300], "to": [0, 2000, 600]}}],
             "tare": {"massKg": 900, "centre": [2000, 1100, 800], "basis": "calculated"}}
            """.getBytes(StandardCharsets.UTF_8), "box.json");

    public static final Carrier TRUCK = carrier("truck", "truck", "");
    public static final Carrier TRAILER = carrier("trailer", "centre-axle-trailer", "");

    public static final Catalog CATALOG =
            Catalog.of(List.of(RACK, TABLE, PRINTER, TRAY, GENERATOR), List.of(BODY), List.of(TRUCK, TRAILER));

    public static Carrier carrier(String id, String kind, String more) {
        return CatalogFormats.CARRIER.read(
                """
                {"format": "shelterwright-carrier", "version": 1, "id": "%s", "name": "%s", "kind": "%s",
                 "bodyAt": [-3000, -1100, 1100], "length": 7000, "width": 2500,
                 "axles": [{"name": "1", "x": 0, "track": 2000, "tareKg": 3000, "ratingKg": 5500, "group": 1}],
                 "seats": [{"name": "driver", "at": [200, 500, 1500], "driver": true},
                           {"name": "mate", "at": [200, -500, 1500]}]%s}
                """.formatted(id, id, kind, more).getBytes(StandardCharsets.UTF_8), id + ".json");
    }

    public static Brief brief() {
        return Brief.named("small-post", "Small Post", "box")
                .carrier("truck")
                .trailer(new Trailer(
                        "trailer",
                        List.of(new TrailerLoad(
                                new UnitSpec("generator-1", "Generator", "generator", "power"),
                                Pose.at(Point.ofMm(-450, -350, 700))))))
                .units(List.of(
                        new UnitSpec("rack-1", "Rack 1", "rack", "telemetry"),
                        new UnitSpec("rack-2", "Rack 2", "rack", "telemetry"),
                        new UnitSpec("table-1", "Table", "table", "work"),
                        new UnitSpec("printer-1", "Printer", "printer", "work"),
                        new UnitSpec("tray-1", "Tray", "tray", "work")))
                .crew(2)
                .wishes(List.of(
                        new Wish(Wish.Kind.NEAR, List.of("rack-1", "rack-2"), 300_000, null),
                        new Wish(Wish.Kind.FACING, List.of("table-1"), null, Face.LEFT)))
                .limits(Map.of("access.walkway-width", 600.0))
                .wires(List.of(new Wire("w1", "rack-1/power", "body/panel 1", "3G2.5", 4_000_000)))
                .build();
    }

    /** All placed but the second rack; the printer stands on the table and the tray on the printer. */
    public static Layout layout() {
        Brief brief = brief();
        Map<String, Placement> placements = new LinkedHashMap<>();
        put(placements, "rack-1", Place.onFloor(Pose.at(Point.ofMm(3200, 0, 0))), null);
        put(placements, "table-1", Place.onFloor(new Pose(Point.ofMm(1000, 0, 0), QuarterTurn.R90)), null);
        Place onTable = new Place(
                Surface.ON_UNIT, "table-1", new Pose(new Point(1_100_500, 100_000, 740_000), QuarterTurn.R180));
        put(placements, "printer-1", onTable, Place.onFloor(Pose.at(Point.ofMm(2500, 1500, 0))));
        put(
                placements,
                "tray-1",
                new Place(Surface.ON_UNIT, "printer-1", Pose.at(Point.ofMm(1150, 150, 1040))),
                new Place(Surface.ON_UNIT, "printer-1", Pose.at(Point.ofMm(2550, 1550, 300))));
        placements.computeIfPresent(
                "rack-1", (unit, placement) -> placement.withPin(new Pin(true, false, false, true)));
        return Layout.empty(brief, Parts.of(brief, CATALOG))
                .withPlacements(placements)
                .withAcceptances(List.of(new Acceptance(
                        "access.exit-count", List.of(), "One person works inside.", "A. Planner", "2026-01-31")))
                .withProvenance(new Provenance("0.1.0", 7L, null));
    }

    private static void put(Map<String, Placement> placements, String unit, Place station, Place road) {
        placements.put(unit, new Placement(unit, station, road, Pin.NONE));
    }
}
