package org.shelterwright.layouts.transport.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.Stand;

/** A journey resolved for checking. Immutable; making it costs about one mass statement for each part of a layout. */
public final class JourneyScene {
    private static final int DEEPEST = 3;

    private final Journey journey;
    private final JourneyParts parts;
    private final List<RuleSet> ruleSets;
    private final Map<String, Shape> shapes;
    private final Map<String, Shape> driven;
    private final Map<String, PlacedLoad> loads = new LinkedHashMap<>();
    private final List<LegScene> legs = new ArrayList<>();

    private JourneyScene(Journey journey, JourneyParts parts, List<RuleSet> ruleSets, @Nullable JourneyScene known) {
        this.journey = journey;
        this.parts = parts;
        this.ruleSets = List.copyOf(ruleSets);
        this.shapes = known == null ? shapes(journey, parts, ruleSets) : known.shapes;
        this.driven = known == null ? driven(journey, parts, ruleSets, shapes) : known.driven;
        journey.loads().forEach(load -> placed(load, 0));
        for (int i = 0; i < journey.legs().size(); i++) {
            Leg leg = journey.legs().get(i);
            Rules rules = Rules.of("leg", leg.id(), leg.ruleSets(), journey.limits(), ruleSets)
                    .withLoadCases(leg.loadCases());
            legs.add(new LegScene(this, leg, i + 1, rules));
        }
    }

    /**
     * Resolves a journey.
     *
     * @param ruleSets the rule sets that there are
     * @throws IllegalArgumentException if it names what there is not
     */
    public static JourneyScene of(Journey journey, JourneyParts parts, List<RuleSet> ruleSets) {
        return new JourneyScene(journey, parts, ruleSets, null);
    }

    /** The same pieces on other loads or legs; their shapes are shared. */
    public JourneyScene with(Journey changed) {
        boolean same = changed.pieces().equals(journey.pieces());
        return new JourneyScene(changed, parts, ruleSets, same ? this : null);
    }

    public Journey journey() {
        return journey;
    }

    public JourneyParts parts() {
        return parts;
    }

    public List<RuleSet> ruleSets() {
        return ruleSets;
    }

    public List<LegScene> legs() {
        return legs;
    }

    public Optional<Shape> shape(String piece) {
        return Optional.ofNullable(shapes.get(piece));
    }

    /** The shape of a piece on its own wheels: a body goes on the carrier of its layout. */
    public Optional<Shape> driven(String piece) {
        return Optional.ofNullable(driven.get(piece));
    }

    public Optional<PlacedLoad> load(String id) {
        return Optional.ofNullable(loads.get(id));
    }

    private static Map<String, Shape> shapes(Journey journey, JourneyParts parts, List<RuleSet> ruleSets) {
        Map<String, Shape> shapes = new LinkedHashMap<>();
        for (Piece piece : journey.pieces()) {
            String layout = piece.layout();
            shapes.put(
                    piece.id(),
                    Shapes.of(piece, layout == null ? null : parts.layouts().get(layout), ruleSets));
        }
        return shapes;
    }

    private static Map<String, Shape> driven(
            Journey journey, JourneyParts parts, List<RuleSet> ruleSets, Map<String, Shape> shapes) {
        Map<String, Shape> driven = new LinkedHashMap<>(shapes);
        for (Piece piece : journey.pieces()) {
            String layout = piece.layout();
            if (piece.part() == Piece.Part.BODY && layout != null) {
                Layout of = parts.layouts().get(layout);
                if (of != null && of.carrier().isPresent()) {
                    driven.put(piece.id(), Shapes.of(piece.as(Piece.Part.VEHICLE), of, ruleSets));
                }
            }
        }
        return driven;
    }

    private PlacedLoad placed(Load load, int depth) {
        PlacedLoad there = loads.get(load.id());
        if (there != null) {
            return there;
        }
        if (depth > DEEPEST) {
            throw new IllegalArgumentException("The load \"" + load.id() + "\" stands on itself in the end.");
        }
        TransitCar car = parts.transit()
                .car(load.car())
                .orElseThrow(() -> new IllegalArgumentException(
                        "The transit car \"" + load.car() + "\" of load \"" + load.id() + "\" is not known."));
        List<PlacedPiece> pieces = new ArrayList<>();
        for (Stand stand : load.stands()) {
            pieces.add(new PlacedPiece(shapeOn(load, stand, depth), stand));
        }
        PlacedLoad made = new PlacedLoad(load, car, pieces);
        loads.put(load.id(), made);
        return made;
    }

    private Shape shapeOn(Load load, Stand stand, int depth) {
        Shape shape = shapes.get(stand.what());
        if (shape != null) {
            return shape;
        }
        Load inner = journey.load(stand.what())
                .orElseThrow(() -> new IllegalArgumentException("The load \"" + load.id() + "\" places \""
                        + stand.what() + "\", which is no piece or load of the journey."));
        return Shapes.of(placed(inner, depth + 1));
    }
}
