package org.shelterwright.solver.transport;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.Underside;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.transport.Crate;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.JourneyParts;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.StandardLoader;

class JourneyPlannerTest {
    private static final Catalog CATALOG = BuiltInCatalog.read();
    private static final JourneyChecker CHECKER = JourneyChecker.standard();
    private static final JourneyPlanner PLANNER = new JourneyPlanner(CHECKER, new LoaderPacker(new StandardLoader()));
    private static final OpenedJourney SAMPLE = JourneyFiles.read(
            Samples.journey("road-rail-move"),
            CATALOG,
            from -> Samples.layout(from.substring("sample:".length())).orElseThrow(),
            CHECKER.ruleSets());

    private static PlanResult plan(Journey journey) {
        return PLANNER.plan(new PlanRequest(journey, SAMPLE.parts(), 1));
    }

    @Test
    void everyLegOfTheSampleIsAnsweredAndMet() {
        PlanResult result = plan(SAMPLE.journey());

        assertThat(result.ledger().all().allMet()).isTrue();
        assertThat(result.ledger().table(result.scene().legs()))
                .extracting(cell -> cell.leg().number() + cell.unit())
                .contains(
                        "1river-post",
                        "1generator-trailer",
                        "1water-lab",
                        "1lorry-1",
                        "1crate-6",
                        "2river-post",
                        "2generator-trailer",
                        "2water-lab",
                        "2wagon-1",
                        "2wagon-2",
                        "2crate-1",
                        "3water-lab",
                        "3crate-5");
        // From scratch, by layouts alone.
        assertThat(CHECKER.check(CHECKER.scene(result.scene().journey(), SAMPLE.parts())))
                .isEqualTo(result.ledger());
    }

    @Test
    void vehiclesAreHeldByFourLashingsEachToPointsOfTheirOwn() {
        Load wagon = plan(SAMPLE.journey()).scene().journey().load("wagon-1").orElseThrow();

        for (String vehicle : List.of("river-post", "generator-trailer")) {
            assertThat(wagon.lashings().stream().filter(one -> one.what().contains(vehicle)))
                    .as(vehicle)
                    .hasSize(4);
        }
        Set<String> anchors = new LinkedHashSet<>();
        int ends = 0;
        for (Lashing lashing : wagon.lashings()) {
            anchors.add(lashing.anchor());
            ends++;
            if (lashing.anchor2() != null) {
                anchors.add(lashing.anchor2());
                ends++;
            }
        }
        assertThat(anchors).hasSize(ends);
    }

    @Test
    void theSameRequestGivesTheSameBytes() {
        PlanResult one = plan(SAMPLE.journey());
        PlanResult two = plan(SAMPLE.journey());

        assertThat(JourneyFiles.bytes(one.scene().journey(), SAMPLE.parts()))
                .isEqualTo(JourneyFiles.bytes(two.scene().journey(), SAMPLE.parts()));
    }

    @Test
    void planningAPlannedJourneyChangesNoLashingsAndPinnedThingsStay() {
        Load wagon = SAMPLE.journey().load("wagon-2").orElseThrow();
        Stand pinned = new Stand("water-lab", Pose.at(Point.ofMm(163, 151, 0)), true);

        PlanResult result = plan(SAMPLE.journey().with(wagon.withStands(List.of(pinned))));

        assertThat(result.scene().journey().load("wagon-2").orElseThrow().stand("water-lab"))
                .contains(pinned);
        PlanResult again = plan(result.scene().journey());
        assertThat(again.scene().journey().load("wagon-1").orElseThrow().lashings())
                .isEqualTo(
                        result.scene().journey().load("wagon-1").orElseThrow().lashings());
    }

    @Test
    void lashingsAreProposedBesideAPersonsOwnWhereThoseAreNotEnough() {
        Journey planned = plan(SAMPLE.journey()).scene().journey();
        Load wagon = planned.load("wagon-1").orElseThrow();
        Lashing first = wagon.lashings().stream()
                .filter(one -> one.what().contains("river-post"))
                .findFirst()
                .orElseThrow();
        Lashing own = Lashing.direct("H1", first.kind(), "river-post", first.eye(), first.anchor());
        Load bare = wagon.withLashings(List.of(own))
                .withBlocks(List.of())
                .withStands(wagon.stands().stream()
                        .map(stand -> new Stand(stand.what(), stand.pose(), true))
                        .toList());

        PlanResult result = plan(planned.with(bare));

        Load held = result.scene().journey().load("wagon-1").orElseThrow();
        assertThat(held.lashings()).contains(own);
        assertThat(held.lashings().stream().filter(one -> one.what().contains("river-post")))
                .hasSizeGreaterThan(1);
        assertThat(result.ledger().all().of("transport.held"))
                .filteredOn(row -> row.units().contains("river-post"))
                .allMatch(row -> row.verdict() == Verdict.MET || row.verdict() == Verdict.CLOSE);
        assertThat(plan(result.scene().journey())
                        .scene()
                        .journey()
                        .load("wagon-1")
                        .orElseThrow())
                .isEqualTo(held);
    }

    /** A car one size too small: the ledger names the governing figure and the next car that would do. */
    @Test
    void aWagonTooSmallIsRefusedAndTheNextThatWouldDoIsNamed() {
        Journey journey = SAMPLE.journey();
        List<Load> loads = new ArrayList<>();
        for (Load load : journey.loads()) {
            loads.add(load.id().startsWith("wagon") ? load.withCar("flat-wagon-2-axle") : load);
        }
        Leg rail = journey.legs().get(1).withLoads(List.of("wagon-1"));
        PlanResult result = plan(journey.withLoads(loads).withLegs(List.of(rail)));

        Row row = result.ledger().all().of("transport.deck-length").stream()
                .filter(one -> one.verdict() == Verdict.BROKEN)
                .findFirst()
                .orElseThrow();
        assertThat(row.capacity()).isEqualTo(12.5);
        assertThat(row.finding()).contains("the deck of the Flat wagon, two axles is 12500 mm long.");
        assertThat(result.ledger().all().allMet()).isFalse();
    }

    private static Journey crates(int count, String car, int cars) {
        Random random = new Random(3);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int x = 400 + 100 * random.nextInt(8);
            int y = 400 + 100 * random.nextInt(6);
            int z = 300 + 100 * random.nextInt(6);
            pieces.add(Piece.ofCrate(
                    "c" + i,
                    "Crate " + i,
                    new Crate(
                            Size.ofMm(x, y, z),
                            40.0 + 10 * random.nextInt(20),
                            2.0,
                            Point.ofMm(x / 2, y / 2, z / 2),
                            Underside.SAWN_TIMBER,
                            null,
                            5_000.0,
                            false,
                            List.of())));
        }
        List<Load> loads = new ArrayList<>();
        for (int i = 0; i < cars; i++) {
            loads.add(Load.empty("box-" + (i + 1), "Box " + (i + 1), car));
        }
        Leg leg = new Leg(
                "sea",
                "Sea",
                Mode.SEA,
                "here",
                "there",
                null,
                List.of("sea-ctu", "stowage-ctu"),
                List.of(),
                null,
                null,
                null,
                false,
                null,
                List.of(),
                List.of(),
                loads.stream().map(Load::id).toList(),
                List.of(),
                List.of(),
                null);
        return new Journey("crates", "Crates", pieces, loads, List.of(leg), Map.of(), null, null);
    }

    /** Sixty crates in one container, each result judged by the ledger from scratch. The time is told, not asserted. */
    @Test
    void theLoadOfASixtyCrateCarIsFoundAndEveryResultIsCheckedByTheLedger() {
        PlanRequest request =
                new PlanRequest(crates(60, "container-1cc", 1), new JourneyParts(CATALOG.transit(), Map.of()), 1);
        long start = System.nanoTime();
        PlanResult result = PLANNER.plan(request);
        System.out.printf(
                Locale.ROOT, "60 crates in one container: %.2f s (aim: 5 s)%n", (System.nanoTime() - start) / 1e9);

        assertThat(CHECKER.check(CHECKER.scene(result.scene().journey(), request.parts())))
                .isEqualTo(result.ledger());

        assertThat(result.ledger().all().rows())
                .filteredOn(row -> row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.NOT_ASSESSED)
                .isEmpty();
        assertThat(result.scene().journey().load("box-1").orElseThrow().stands())
                .hasSize(60);
        assertThat(result.scene().journey().load("box-1").orElseThrow().packed())
                .isTrue();
    }

    @Test
    void aSearchOverSeedsKeepsTheBestTellsHowFarItIsAndStopsWhenAsked() {
        PlanRequest request =
                new PlanRequest(crates(60, "container-1cc", 1), new JourneyParts(CATALOG.transit(), Map.of()), 1);
        JourneySearch search = new JourneySearch(CHECKER, new StandardLoader());
        List<PlanProgress> told = new ArrayList<>();
        StopSignal stop = new StopSignal();

        PlanResult best = search.search(request, 5, told::add, stop);
        assertThat(told).extracting(PlanProgress::tries).containsExactly(1, 2, 3, 4, 5);
        assertThat(told).isSortedAccordingTo((a, b) -> b.best().compareTo(a.best()));
        assertThat(PlanMeasure.of(best.ledger().all())).isEqualTo(told.get(4).best());

        List<PlanProgress> stopped = new ArrayList<>();
        PlanResult first = search.search(
                request,
                5,
                step -> {
                    stopped.add(step);
                    stop.stop();
                },
                stop);
        assertThat(stopped).hasSize(1);
        assertThat(first.ledger())
                .isEqualTo(CHECKER.check(CHECKER.scene(first.scene().journey(), request.parts())));

        List<PlanProgress> open = new ArrayList<>();
        search.search(new PlanRequest(SAMPLE.journey(), SAMPLE.parts(), 1), 5, open::add, new StopSignal());
        assertThat(open).extracting(PlanProgress::of).containsExactly(1);
    }

    @Test
    void whatFindsNoPlaceGoesOnToTheNextCarAndIsElseTold() {
        PlanResult two = PLANNER.plan(
                new PlanRequest(crates(60, "container-1d", 2), new JourneyParts(CATALOG.transit(), Map.of()), 1));
        PlanResult one = PLANNER.plan(
                new PlanRequest(crates(60, "container-1d", 1), new JourneyParts(CATALOG.transit(), Map.of()), 1));

        int placed = two.scene().journey().loads().stream()
                .mapToInt(load -> load.stands().size())
                .sum();
        assertThat(placed).isEqualTo(60);
        assertThat(two.scene().journey().load("box-2").orElseThrow().stands()).isNotEmpty();
        assertThat(two.ledger().all().of("transport.inside-car")).allMatch(row -> row.verdict() == Verdict.MET);
        assertThat(one.ledger().all().of("transport.inside-car")).anyMatch(row -> row.verdict() == Verdict.BROKEN);
    }

    @Test
    void waysToGoNameWhatGovernsEachPieceOnEachCar() {
        Journey few = new Journey(
                "few",
                "Few",
                SAMPLE.journey().pieces().subList(2, 4),
                List.of(),
                List.of(SAMPLE.journey().legs().get(1).withLoads(List.of())),
                Map.of(),
                null,
                null);

        List<WaysToGo.Way> ways = new WaysToGo(PLANNER).of(CHECKER.scene(few, SAMPLE.parts()));

        assertThat(ways).hasSize(2 * CATALOG.transit().cars().size());
        assertThat(ways)
                .filteredOn(way -> way.pieces().equals(List.of("water-lab"))
                        && way.car().id().equals("flat-wagon-4-axle"))
                .singleElement()
                .satisfies(way -> assertThat(way.verdict()).isEqualTo(Verdict.MET));
        assertThat(ways)
                .filteredOn(way -> way.pieces().equals(List.of("water-lab"))
                        && way.car().id().equals("container-1aa"))
                .singleElement()
                .satisfies(way -> assertThat(way.verdict()).isEqualTo(Verdict.BROKEN));
    }
}
