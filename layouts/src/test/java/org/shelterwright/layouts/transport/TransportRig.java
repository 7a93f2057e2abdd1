package org.shelterwright.layouts.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.AnchorRow;
import org.shelterwright.catalog.transit.Deck;
import org.shelterwright.catalog.transit.FloorMaterial;
import org.shelterwright.catalog.transit.FloorRating;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.catalog.transit.Underside;
import org.shelterwright.catalog.transit.WheelGroup;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.transport.scene.JourneyParts;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** One car with crates on one leg, for tests of single limits. */
public final class TransportRig {
    public static final JourneyChecker CHECKER = JourneyChecker.standard();
    private static final Transit TRANSIT = BuiltInCatalog.entries().transit();

    private final List<Piece> pieces = new ArrayList<>();
    private final List<Stand> stands = new ArrayList<>();
    private final List<Lashing> lashings = new ArrayList<>();
    private final List<Block> blocks = new ArrayList<>();
    private final List<RuleSet> sets = new ArrayList<>(RuleSets.builtIn());
    private final List<TransitCar> cars = new ArrayList<>(TRANSIT.cars());
    private String car = "flat-wagon-4-axle";
    private Mode mode = Mode.RAIL;
    private List<String> ruleSets = List.of("rail-ctu", "rail-loading", "lashing");
    private List<String> loadCases = List.of("rail-combined-lengthways", "rail-combined-sideways");
    private @Nullable String outline = "route-varn";
    private @Nullable String category = "C3";
    private @Nullable Double curveM = 250.0;
    private boolean packed;
    private List<String> lifts = List.of();
    private List<Restriction> restrictions = List.of();

    /** A car of no mass of its own, with a pair of anchor points every metre at the very edges of its deck. */
    public static TransitCar plainCar(int lengthMm, int widthMm, @Nullable Double anchorN) {
        return new TransitCar(
                "plain",
                "Plain car",
                TransitCar.Kind.LORRY,
                null,
                new Deck(lengthMm * 1000, widthMm * 1000, null, 1_000_000, 1_000_000, FloorMaterial.PLYWOOD, List.of()),
                lengthMm * 1000,
                null,
                List.of(
                        new WheelGroup("rear axle", 0, 1, 0, 1_500_000, 20_000.0),
                        new WheelGroup("front axle", lengthMm * 1000, 1, 0, 1_500_000, 20_000.0)),
                0,
                null,
                null,
                30_000.0,
                List.of(),
                FloorRating.UNKNOWN,
                List.of(),
                List.of(
                        new AnchorRow("right", Point.ORIGIN, 1_000_000, lengthMm / 1000 + 1, anchorN),
                        new AnchorRow(
                                "left", new Point(0, widthMm * 1000, 0), 1_000_000, lengthMm / 1000 + 1, anchorN)),
                List.of(),
                List.of(),
                List.of(),
                Source.stated("test", null),
                null);
    }

    /** A load case of one push only. */
    public static LoadCase push(
            double forwardG, double rearwardG, double sidewaysG, double forwardFactor, double factor) {
        return new LoadCase(
                "push",
                "push",
                forwardG,
                rearwardG,
                sidewaysG,
                0,
                0,
                1,
                1,
                forwardFactor,
                factor,
                LoadCase.Basis.PROOF,
                Source.stated("test", null));
    }

    public TransportRig on(String id) {
        car = id;
        return this;
    }

    public TransportRig on(TransitCar own) {
        cars.add(own);
        car = own.id();
        return this;
    }

    public TransportRig by(Mode how, String... sets) {
        mode = how;
        ruleSets = List.of(sets);
        loadCases = List.of();
        return this;
    }

    public TransportRig against(LoadCase... cases) {
        sets.add(new RuleSet("test", "test", null, List.of(), List.of(cases)));
        ruleSets = List.of("test");
        loadCases = List.of();
        return this;
    }

    public TransportRig along(@Nullable String outlineId, @Nullable String line, @Nullable Double radiusM) {
        outline = outlineId;
        category = line;
        curveM = radiusM;
        return this;
    }

    public TransportRig lifting(String... ids) {
        lifts = List.of(ids);
        return this;
    }

    public TransportRig past(Restriction... places) {
        restrictions = List.of(places);
        return this;
    }

    public TransportRig packed() {
        packed = true;
        return this;
    }

    /** A crate on sawn timber with its centre in its middle, and what it can be lashed by. */
    public static Piece crate(String id, Size size, @Nullable Double massKg, Provision... eyes) {
        return Piece.ofCrate(
                id,
                "Crate " + id,
                new Crate(
                        size,
                        massKg,
                        null,
                        size.box().centre(),
                        Underside.SAWN_TIMBER,
                        null,
                        null,
                        false,
                        List.of(eyes)));
    }

    /** An eye to lash by (mm). */
    public static Provision eye(String name, int x, int y, int z, @Nullable Double ratingN) {
        return new Provision(name, Provision.Use.TIE_DOWN, Point.ofMm(x, y, z), ratingN);
    }

    /** Adds a crate with its centre in its middle, at a place of the car (mm). */
    public TransportRig crate(String id, int x, int y, int z, int dx, int dy, int dz, @Nullable Double massKg) {
        return piece(crate(id, Size.ofMm(dx, dy, dz), massKg), x, y, z);
    }

    public TransportRig piece(Piece piece, int x, int y, int z) {
        pieces.add(piece);
        stands.add(new Stand(piece.id(), Pose.at(Point.ofMm(x, y, z)), false));
        return this;
    }

    public TransportRig lash(Lashing lashing) {
        lashings.add(lashing);
        return this;
    }

    public TransportRig block(Block block) {
        blocks.add(block);
        return this;
    }

    public JourneyScene scene() {
        Load load = new Load("car", "Car", car, stands, lashings, blocks, packed, null, null, null);
        Leg leg = new Leg(
                "leg",
                "Leg",
                mode,
                "here",
                "there",
                null,
                ruleSets,
                loadCases,
                outline,
                category,
                curveM,
                false,
                null,
                restrictions,
                List.of(),
                List.of("car"),
                lifts,
                List.of(),
                null);
        Journey journey = new Journey("rig", "Rig", pieces, List.of(load), List.of(leg), Map.of(), null, null);
        Transit transit = new Transit(
                cars,
                TRANSIT.outlines(),
                TRANSIT.lashings(),
                TRANSIT.lineCategories(),
                TRANSIT.frictions(),
                TRANSIT.wagonClasses());
        return JourneyScene.of(journey, new JourneyParts(transit, Map.of()), sets);
    }

    public LegScene leg() {
        return scene().legs().get(0);
    }

    public PlacedLoad load() {
        return scene().load("car").orElseThrow();
    }

    /** The rows of one limit. */
    public List<Row> rows(String limit) {
        return rows(leg(), limit);
    }

    /** The rows of one limit on a leg. */
    public static List<Row> rows(LegScene leg, String limit) {
        List<LegLimit> asked = CHECKER.limits().stream()
                .filter(one -> one.id().equals("transport." + limit))
                .toList();
        if (asked.isEmpty()) {
            throw new AssertionError("There is no limit transport." + limit);
        }
        return new JourneyChecker(asked, CHECKER.ruleSets()).check(leg).ledger().rows();
    }

    /** The only row of a limit. */
    public Row row(String limit) {
        List<Row> rows = rows(limit);
        if (rows.size() != 1) {
            throw new AssertionError("There are " + rows.size() + " rows of " + limit + ": " + rows);
        }
        return rows.get(0);
    }
}
