package org.shelterwright.solver.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;

class WireRouterTest {
    private static final Checker CHECKER = Checker.standard();
    private static final Layout POST =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();

    private static Layout asking(Wire... wires) {
        var brief = POST.brief().withWires(List.of(wires));
        return Layout.empty(brief, Parts.of(brief, BuiltInCatalog.read())).withPlacements(POST.placements());
    }

    private static List<Row> open(Layout layout) {
        return CHECKER.check(layout).rows().stream()
                .filter(row -> row.subject() == Subject.CABLES)
                .filter(row -> row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.NOT_ASSESSED)
                .toList();
    }

    @Test
    void equalScenesGiveEqualRoutes() {
        assertThat(WireRouter.route(CHECKER.scene(POST)).routes())
                .isEqualTo(WireRouter.route(CHECKER.scene(POST.withRoutes(Map.of())))
                        .routes());
    }

    @Test
    void aWireWhoseCableIsUnknownSaysSo() {
        RoutePlan plan = WireRouter.route(
                CHECKER.scene(asking(new Wire("w1", "power-unit/mains out", "rack-1/power", "supply-9x9", null))));

        assertThat(plan.routes()).isEmpty();
        assertThat(plan.unrouted())
                .extracting(RoutePlan.Unrouted::reason)
                .containsExactly(
                        "The cable of wire w1 is not in the catalog (supply-9x9). Name one of: shelterwright catalog"
                                + " list --kind cable.");
    }

    @Test
    void aWireToAUnitWithoutAPlaceSaysSo() {
        Layout layout = asking(new Wire("w1", "power-unit/mains out", "rack-1/power", "supply-3x1.5", null))
                .without("rack-1");

        assertThat(WireRouter.route(CHECKER.scene(layout)).unrouted())
                .extracting(RoutePlan.Unrouted::reason)
                .containsExactly("Wire w1 ends at Telemetry rack 1, power, which is not placed. Place it first.");
    }

    @Test
    void aWireThatNoWayJoinsSaysSoAndStaysNotAssessed() {
        Layout asked = asking(new Wire("w1", "power-unit/mains out", "rack-1/power", "supply-3x1.5", null));
        Placement other = asked.placements().get("rack-2");
        Point inside = other.station().pose().at().plus(Point.ofMm(20, 20, 20));
        Placement into = asked.placements().get("rack-1");
        Layout layout = asked.with(into.withStation(
                into.station().with(new Pose(inside, other.station().pose().yaw()))));

        RoutePlan plan = WireRouter.route(CHECKER.scene(layout));

        assertThat(plan.routes()).isEmpty();
        assertThat(plan.unrouted())
                .extracting(RoutePlan.Unrouted::reason)
                .containsExactly(
                        "No way was found for wire w1 from Power unit, mains out to Telemetry rack 1, power: its"
                                + " ends cannot be joined past what stands about. Move a unit, or give the body a tray between"
                                + " them.");
        assertThat(open(plan.in(layout)))
                .anySatisfy(row -> assertThat(row.finding()).contains("None of the 1 wire has a route"));
    }

    @Test
    void aSizeIsChosenThatBearsTheCurrentAndKeepsTheDrop() {
        Layout layout = asking(
                new Wire("w1", "battery-box/battery", "heater/supply", null, null, "dc-2", null, null, null, null));
        Layout routed = WireRouter.route(CHECKER.scene(layout)).in(layout);

        // 95 W at 24 V over some 8 m: 1.5 mm² would lose 4 %, 2.5 mm² less than 3 %.
        assertThat(routed.routes().get("w1")).isNotNull();
        assertThat(routed.routes().get("w1").cable()).isEqualTo("dc-2x2.5");
        assertThat(open(routed)).isEmpty();
    }

    @Test
    void wiresOfABusShareTheirWay() {
        RoutePlan bus = WireRouter.route(CHECKER.scene(asking(earth("w1", "rack-1", "e"), earth("w2", "rack-2", "e"))));
        RoutePlan alone =
                WireRouter.route(CHECKER.scene(asking(earth("w1", "rack-1", null), earth("w2", "rack-2", null))));

        assertThat(bus.cost()).isLessThan(0.8 * alone.cost());
        assertThat(bus.bound()).isEqualTo(bus.cost());
        assertThat(open(bus.in(asking(earth("w1", "rack-1", "e"), earth("w2", "rack-2", "e")))))
                .isEmpty();
    }

    private static Wire earth(String id, String unit, String bus) {
        return new Wire(id, unit + "/earth", "power-unit/earth", "earth-1x16", null, null, null, null, null, bus);
    }

    @Test
    void aPinnedRouteStays() {
        Route pinned = POST.routes().get("w7");
        assertThat(pinned).isNotNull();
        Layout layout = POST.withRoutes(Map.of("w7", pinned.withPinned(true)));

        assertThat(WireRouter.route(CHECKER.scene(layout)).routes().get("w7")).isEqualTo(pinned.withPinned(true));
    }

    @Test
    void afterAMoveOnlyTheWiresConcernedAreLaidAgainAndAllHold() {
        Scene before = CHECKER.scene(POST);
        Placement heater = POST.placements().get("heater");
        assertThat(heater).isNotNull();
        Placement moved =
                heater.withStation(heater.station().with(heater.station().pose().moved(new Point(0, 0, 100_000))));
        Scene scene = before.with(moved);

        RoutePlan plan = WireRouter.reroute(scene, Set.of("heater"));

        assertThat(plan.unrouted()).isEmpty();
        assertThat(plan.routes().get("w17")).isNotEqualTo(POST.routes().get("w17"));
        List<String> changed = new ArrayList<>();
        plan.routes().forEach((wire, route) -> {
            if (!route.equals(POST.routes().get(wire))) {
                changed.add(wire);
            }
        });
        assertThat(changed).contains("w17").hasSizeLessThan(8);
        assertThat(open(plan.in(scene.layout()))).isEmpty();
    }

    @Test
    void aTraySoNarrowThatNotAllFitSendsSomeAnotherWay() {
        List<Wire> wires = new ArrayList<>();
        for (int i = 1; i <= 14; i++) {
            wires.add(new Wire("w" + i, "power-unit/mains out", "rack-" + (1 + i % 2) + "/power", "supply-3x6", null));
        }
        Layout layout = asking(wires.toArray(Wire[]::new));

        RoutePlan plan = WireRouter.route(CHECKER.scene(layout));

        // 14 x 145 mm² are 34 % of a tray of 100 x 60 mm: one tray takes them, but not with two more.
        assertThat(plan.within()).isTrue();
        assertThat(plan.unrouted()).isEmpty();
        assertThat(CHECKER.check(plan.in(layout)).of("cables.fill"))
                .allSatisfy(row -> assertThat(row.verdict()).isIn(Verdict.MET, Verdict.CLOSE));
        List<Wire> more = new ArrayList<>(wires);
        for (int i = 15; i <= 20; i++) {
            more.add(new Wire("w" + i, "power-unit/mains out", "rack-" + (1 + i % 2) + "/power", "supply-3x6", null));
        }
        Layout full = asking(more.toArray(Wire[]::new));
        RoutePlan parted = WireRouter.route(CHECKER.scene(full));
        assertThat(parted.within()).isTrue();
        assertThat(parted.rounds()).isPositive();
        assertThat(parted.gap()).isLessThan(0.05);
        assertThat(CHECKER.check(parted.in(full)).of("cables.fill"))
                .allSatisfy(row -> assertThat(row.verdict()).isIn(Verdict.MET, Verdict.CLOSE));
    }

    @Test
    void theTableOfTraysHoldsTheLengthsOfAPlainSearch() {
        for (Body body : BuiltInCatalog.entries().bodies()) {
            for (CableClass one : List.of(CableClass.POWER, CableClass.SIGNAL)) {
                TrayTable table = new TrayTable(body, one);
                Random random = new Random(7);
                for (int k = 0; k < 40; k++) {
                    int a = random.nextInt(table.trays().size());
                    int b = random.nextInt(table.trays().size());
                    int atA = random.nextInt(table.trays().get(a).length() + 1);
                    int atB = random.nextInt(table.trays().get(b).length() + 1);

                    assertThat(table.length(a, atA, b, atB))
                            .as("%s, %s, %d", body.id(), one, k)
                            .isEqualTo(plain(table, a, atA, b, atB));
                }
            }
        }
    }

    /** Dijkstra over the corners, crossings and the two places of all trays. */
    private static long plain(TrayTable table, int a, int atA, int b, int atB) {
        SimpleWeightedGraph<Point, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        for (int i = 0; i < table.trays().size(); i++) {
            var path = table.trays().get(i);
            var stations = new TreeSet<Integer>(List.of(0, path.length()));
            for (var other : table.trays()) {
                for (int s = 0; s <= other.length(); s += 10_000) {
                    int here = path.stationOf(other.at(s));
                    if (here >= 0 && other != path) {
                        stations.add(here);
                    }
                }
                for (int s : new int[] {0, other.length()}) {
                    int here = path.stationOf(other.at(s));
                    if (here >= 0) {
                        stations.add(here);
                    }
                }
            }
            if (i == a) {
                stations.add(atA);
            }
            if (i == b) {
                stations.add(atB);
            }
            Integer before = null;
            for (int s : stations) {
                graph.addVertex(path.at(s));
                if (before != null && !path.at(before).equals(path.at(s))) {
                    var edge = graph.addEdge(path.at(before), path.at(s));
                    if (edge != null) {
                        graph.setEdgeWeight(edge, s - before);
                    }
                }
                before = s;
            }
        }
        double weight = new DijkstraShortestPath<>(graph)
                .getPathWeight(
                        table.trays().get(a).at(atA), table.trays().get(b).at(atB));
        return Double.isInfinite(weight) ? TrayTable.NONE : Math.round(weight);
    }
}
