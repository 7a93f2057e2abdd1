package org.shelterwright.layouts.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.LashingKind;
import org.shelterwright.catalog.transit.LineCategories;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.JourneyParts;
import org.shelterwright.layouts.transport.scene.Shapes;

/** Holds whatever a journey names against what there is. */
final class JourneyCheck {
    private static final int MOST_PIECES = 2_000;
    private static final int MOST_OTHERS = 200;
    private static final int FARTHEST = 200 * Lengths.M;

    private final Journey journey;
    private final JourneyParts parts;
    private final Places places;
    private final List<RuleSet> ruleSets;
    private final Findings findings;
    private final Set<String> pieces;
    private final Set<String> loads;

    JourneyCheck(Journey journey, JourneyParts parts, Places places, List<RuleSet> ruleSets, Findings findings) {
        this.journey = journey;
        this.parts = parts;
        this.places = places;
        this.ruleSets = ruleSets;
        this.findings = findings;
        this.pieces = BriefReferences.ids(journey.pieces(), Piece::id);
        this.loads = BriefReferences.ids(journey.loads(), Load::id);
    }

    void check() {
        if (journey.pieces().size() > MOST_PIECES
                || journey.loads().size() > MOST_OTHERS
                || journey.legs().size() > MOST_OTHERS) {
            findings.refuse(
                    places,
                    "The journey has " + journey.pieces().size() + " pieces, "
                            + journey.loads().size() + " loads and "
                            + journey.legs().size() + " legs; at most "
                            + MOST_PIECES + " pieces and " + MOST_OTHERS + " of the others are taken. Split it.");
            return;
        }
        for (int i = 0; i < journey.pieces().size(); i++) {
            piece(journey.pieces().get(i), places.key("pieces").index(i));
        }
        for (int i = 0; i < journey.loads().size(); i++) {
            load(journey.loads().get(i), places.key("loads").index(i));
        }
        for (int i = 0; i < journey.legs().size(); i++) {
            leg(journey.legs().get(i), places.key("legs").index(i));
        }
        for (String limit : journey.limits().keySet()) {
            known(
                    limit,
                    BriefReferences.ids(List.of(Figure.values()), Figure::id),
                    "limit",
                    places.key("limits").key(limit));
        }
        if (findings.problems().isEmpty()) {
            eyes();
        }
    }

    private boolean known(String id, Collection<String> known, String kind, Places at) {
        return BriefReferences.known(id, known, kind, at, findings);
    }

    private void all(List<String> ids, Collection<String> known, String kind, Places at) {
        for (int i = 0; i < ids.size(); i++) {
            known(ids.get(i), known, kind, at.index(i));
        }
    }

    private void piece(Piece piece, Places at) {
        all(piece.apart(), pieces, "piece", at.key("apart"));
        all(piece.together(), pieces, "piece", at.key("together"));
        String from = piece.layout();
        Layout layout = from == null ? null : parts.layouts().get(from);
        if (layout == null) {
            return;
        }
        boolean lacks = piece.part() == Piece.Part.VEHICLE && layout.parts().carrier() == null
                || piece.part() == Piece.Part.TRAILER && layout.parts().trailer() == null;
        if (lacks) {
            findings.refuse(
                    at.key("part"),
                    "The layout \"" + from + "\" has no " + (piece.part() == Piece.Part.TRAILER ? "trailer" : "carrier")
                            + ", so the piece \"" + piece.id() + "\" cannot be its "
                            + (piece.part() == Piece.Part.TRAILER ? "trailer" : "vehicle") + ".");
        }
    }

    private void load(Load load, Places at) {
        List<TransitCar> cars = parts.transit().cars();
        if (!known(load.car(), BriefReferences.ids(cars, TransitCar::id), "transit car", at.key("car"))) {
            return;
        }
        TransitCar car = parts.transit().car(load.car()).orElseThrow();
        Set<String> placed = new LinkedHashSet<>();
        for (int i = 0; i < load.stands().size(); i++) {
            stand(load, load.stands().get(i), placed, at.key("stands").index(i));
        }
        Set<String> keys = new HashSet<>();
        for (int i = 0; i < load.lashings().size(); i++) {
            Lashing lashing = load.lashings().get(i);
            Places own = at.key("lashings").index(i);
            if (!keys.add(lashing.key())) {
                findings.refuse(
                        own.key("key"), "The key \"" + lashing.key() + "\" is given twice. Change one of them.");
            }
            known(
                    lashing.kind(),
                    BriefReferences.ids(parts.transit().lashings(), LashingKind::id),
                    "lashing",
                    own.key("kind"));
            all(lashing.what(), placed, "piece on this load", own.key("what"));
            anchor(lashing.anchor(), car, own.key("anchor"));
            String second = lashing.anchor2();
            if (second != null) {
                anchor(second, car, own.key("anchor2"));
            }
        }
        for (int i = 0; i < load.blocks().size(); i++) {
            known(
                    load.blocks().get(i).what(),
                    placed,
                    "piece on this load",
                    at.key("blocks").index(i).key("what"));
        }
    }

    private void anchor(String name, TransitCar car, Places at) {
        if (car.anchors().isEmpty()) {
            findings.refuse(
                    at,
                    "The transit car \"" + car.id() + "\" has no anchor points. Take another car, or block the load.");
            return;
        }
        known(name, BriefReferences.ids(car.anchors(), Provision::name), "anchor point of car " + car.id(), at);
    }

    private void stand(Load load, Stand stand, Set<String> placed, Places at) {
        Set<String> all = new LinkedHashSet<>(pieces);
        all.addAll(loads);
        if (!known(stand.what(), all, "piece or load", at.key("what"))) {
            return;
        }
        if (!placed.add(stand.what())) {
            findings.refuse(at, "\"" + stand.what() + "\" is placed twice on load \"" + load.id() + "\". Remove one.");
        }
        Optional<Load> inner = journey.load(stand.what());
        if (inner.isPresent()) {
            boolean container = parts.transit()
                    .car(inner.get().car())
                    .map(car -> car.outside() != null)
                    .orElse(false);
            if (!container || reaches(inner.get(), load.id(), 0)) {
                findings.refuse(
                        at.key("what"),
                        "The load \"" + stand.what() + "\" cannot stand on load \"" + load.id() + "\": "
                                + (container ? "it stands on itself in the end." : "its car has no outside size."));
            }
        }
        Point low = stand.pose().at();
        if (Math.max(Math.abs(low.x()), Math.max(Math.abs(low.y()), Math.abs(low.z()))) > FARTHEST) {
            findings.refuse(
                    at.key("pose").key("at"),
                    "\"" + stand.what()
                            + "\" lies more than 200 m from its car. Lengths are in millimetres: correct it.");
        }
    }

    private boolean reaches(Load from, String wanted, int depth) {
        return from.id().equals(wanted)
                || depth > 2
                || from.stands().stream()
                        .flatMap(stand -> journey.load(stand.what()).stream())
                        .anyMatch(inner -> reaches(inner, wanted, depth + 1));
    }

    private void leg(Leg leg, Places at) {
        Set<String> sets = BriefReferences.ids(ruleSets, RuleSet::id);
        all(leg.ruleSets(), sets, "rule set", at.key("ruleSets"));
        List<LoadCase> cases = new ArrayList<>();
        ruleSets.stream()
                .filter(set -> leg.ruleSets().contains(set.id()))
                .forEach(set -> cases.addAll(set.loadCases()));
        all(leg.loadCases(), BriefReferences.ids(cases, LoadCase::id), "load case", at.key("loadCases"));
        String outline = leg.outline();
        if (outline != null) {
            known(outline, BriefReferences.ids(parts.transit().outlines(), Outline::id), "outline", at.key("outline"));
        }
        String category = leg.lineCategory();
        if (category != null) {
            List<String> names = parts.transit().lineCategories().stream()
                    .flatMap(table -> table.categories().stream())
                    .map(LineCategories.Category::name)
                    .toList();
            known(category, names, "line category", at.key("lineCategory"));
        }
        all(leg.loads(), loads, "load", at.key("loads"));
        Set<String> both = new LinkedHashSet<>(pieces);
        both.addAll(loads);
        all(leg.lifts(), both, "piece or load", at.key("lifts"));
        for (int i = 0; i < leg.drives().size(); i++) {
            Leg.Drive drive = leg.drives().get(i);
            Places own = at.key("drives").index(i);
            part(drive.vehicle(), Piece.Part.VEHICLE, own.key("vehicle"));
            String trailer = drive.trailer();
            if (trailer != null) {
                part(trailer, Piece.Part.TRAILER, own.key("trailer"));
            }
        }
    }

    private void part(String id, Piece.Part part, Places at) {
        if (known(id, pieces, "piece", at)
                && journey.piece(id).map(piece -> !goes(piece, part)).orElse(true)) {
            findings.refuse(
                    at,
                    "The piece \"" + id + "\" is no " + part.name().toLowerCase(Locale.ROOT)
                            + " and cannot go on its own wheels here.");
        }
    }

    /** A body goes on the carrier of its layout. */
    private boolean goes(Piece piece, Piece.Part part) {
        String from = piece.layout();
        Layout layout = from == null ? null : parts.layouts().get(from);
        return piece.part() == part
                || part == Piece.Part.VEHICLE
                        && piece.part() == Piece.Part.BODY
                        && layout != null
                        && layout.carrier().isPresent();
    }

    /** Eyes come with the shapes of pieces, which are made only of what is otherwise right. */
    private void eyes() {
        for (int i = 0; i < journey.loads().size(); i++) {
            for (int j = 0; j < journey.loads().get(i).lashings().size(); j++) {
                Lashing lashing = journey.loads().get(i).lashings().get(j);
                String eye = lashing.eye();
                Piece piece = journey.piece(lashing.what().get(0)).orElse(null);
                if (eye == null || piece == null) {
                    continue;
                }
                Places at =
                        places.key("loads").index(i).key("lashings").index(j).key("eye");
                String from = piece.layout();
                List<String> eyes =
                        Shapes.of(piece, from == null ? null : parts.layouts().get(from), ruleSets).eyes().stream()
                                .map(Provision::name)
                                .toList();
                known(eye, eyes, "eye of piece " + piece.id(), at);
            }
        }
    }
}
