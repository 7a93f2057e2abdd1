package org.shelterwright.layouts.ledger.cables;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;

/**
 * Two racks of 600 x 600 x 1000 mm with their backs to the right wall of a body of 4 x 2 x 2 m, 1 m and 3 m from the rear. A power
 * tray, a signal tray and a narrow one run along the body at 1.8 m, above each other on the wall.
 */
final class CablePost {
    private static final Checker CHECKER = Checker.standard();

    private static final Body BODY = CatalogFormats.BODY.read("""
            {"format": "shelterwright-body", "version": 1, "id": "box", "name": "Box", "inside": [4000, 2000, 2000],
             "outside": {"from": [-60, -60, -100], "to": [4060, 2060, 2060]},
             "openings": [{"name": "door", "kind": "door", "wall": "rear", "exit": true,
                           "area": {"from": [0, 700, 0], "to": [0, 1500, 1900]}}],
             "trays": [
               {"name": "power tray", "path": [[100, 50, 1800], [3900, 50, 1800]], "width": 50, "depth": 20,
                "classes": ["power", "earth"]},
               {"name": "signal tray", "path": [[100, 50, 1900], [3900, 50, 1900]], "width": 50, "depth": 20,
                "classes": ["signal", "radio-frequency"]}],
             "entryPanels": [{"name": "panel", "wall": "right", "places": 1,
                              "area": {"from": [3400, 0, 1100], "to": [3600, 0, 1300]}}],
             "tare": {"massKg": 900, "centre": [2000, 1000, 800], "basis": "calculated"}}
            """.getBytes(StandardCharsets.UTF_8), "box.json");

    private static final Item RACK = CatalogFormats.ITEM.read("""
            {"format": "shelterwright-item", "version": 1, "id": "rack", "name": "Rack", "kind": "rack", "material": "steel",
             "size": [600, 600, 1000], "mass": {"massKg": 40, "centre": [300, 300, 500], "basis": "estimated"},
             "mounting": {"surfaces": ["floor"]},
             "power": {"supply": "24 V dc", "ratedW": 240},
             "ports": [
               {"name": "power", "at": [0, 300, 900], "face": "rear", "cableClass": "power", "connector": "terminals"},
               {"name": "network", "at": [0, 100, 900], "face": "rear", "cableClass": "signal", "connector": "8P8C"},
               {"name": "aerial", "at": [0, 200, 900], "face": "rear", "cableClass": "radio-frequency", "connector": "N"}]}
            """.getBytes(StandardCharsets.UTF_8), "rack.json");

    private final List<Wire> wires = new ArrayList<>();
    private final Map<String, Route> routes = new LinkedHashMap<>();
    private final Map<String, Double> limits = new LinkedHashMap<>();
    private List<String> ruleSets = List.of("shelter-common");
    private Pose first = pose(Point.ofMm(1000, 0, 0));

    CablePost wire(Wire wire) {
        wires.add(wire);
        return this;
    }

    CablePost power(String id, String type, @Nullable Integer longest) {
        return wire(new Wire(id, "rack-1/power", "rack-2/power", type, longest));
    }

    CablePost route(String wire, String cable, Run... runs) {
        routes.put(wire, new Route(wire, cable, List.of(runs), null, false));
        return this;
    }

    /** A way from one rack to the other by a tray at a height, the ports at x = 1000 + off and 3000 + off. */
    CablePost byTray(String wire, String cable, String tray, int off, int height) {
        return route(
                wire,
                cable,
                Run.free(List.of(at(1000 + off, 0, 900), at(1000 + off, 0, height), at(1000 + off, 50, height))),
                new Run(tray, null, List.of(at(1000 + off, 50, height), at(3000 + off, 50, height))),
                Run.free(List.of(at(3000 + off, 50, height), at(3000 + off, 0, height), at(3000 + off, 0, 900))));
    }

    /** Chooses no rule set, so that no figure is set. */
    CablePost withoutRules() {
        ruleSets = List.of();
        return this;
    }

    CablePost limit(String id, double value) {
        limits.put(id, value);
        return this;
    }

    /** Puts the first rack elsewhere. */
    CablePost move(int x) {
        first = pose(Point.ofMm(x, 0, 0));
        return this;
    }

    /** Puts the first rack to the left of the second, its back towards it at a distance (mm). */
    CablePost backToTheSecond(int apart) {
        first = new Pose(at(2400 - apart, 0, 0), QuarterTurn.R180);
        return this;
    }

    static Point at(int x, int y, int z) {
        return Point.ofMm(x, y, z);
    }

    Layout layout() {
        Brief brief = Brief.named("post", "Post", "box")
                .units(List.of(
                        new UnitSpec("rack-1", "Rack 1", "rack", "racks"),
                        new UnitSpec("rack-2", "Rack 2", "rack", "racks")))
                .ruleSets(ruleSets)
                .limits(limits)
                .wires(wires)
                .build();
        Catalog catalog = Catalog.of(
                List.of(RACK), List.of(BODY), List.of(), BuiltInCatalog.read().cables(), List.of(), Transit.NONE);
        // Turned so that the backs look to the right wall: the port at (0, y) comes to (600 - y, 0).
        Map<String, Placement> placements = new LinkedHashMap<>();
        placements.put("rack-1", Placement.of("rack-1", Place.onFloor(first)));
        placements.put("rack-2", Placement.of("rack-2", Place.onFloor(pose(at(3000, 0, 0)))));
        return Layout.empty(brief, Parts.of(brief, catalog))
                .withPlacements(placements)
                .withRoutes(routes);
    }

    private static Pose pose(Point at) {
        return new Pose(at, QuarterTurn.R90);
    }

    /** Rows of one limit. */
    List<Row> rows(String limit) {
        return LedgerBuilder.full(
                        new LimitBook(List.of(CHECKER.book().limit(limit).orElseThrow())), CHECKER.scene(layout()))
                .rows();
    }

    Row row(String limit) {
        List<Row> rows = rows(limit);
        if (rows.size() != 1) {
            throw new AssertionError(rows.size() + " rows of " + limit + ": " + rows);
        }
        return rows.get(0);
    }
}
