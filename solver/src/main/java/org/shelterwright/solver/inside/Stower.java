package org.shelterwright.solver.inside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.inside.Interiors;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.inside.pack.PieceStower;
import org.shelterwright.solver.inside.rack.RackArranger;
import org.shelterwright.solver.inside.rack.RackMemory;

/**
 * Finds places inside the units for all pieces of a brief: racks are arranged, loose pieces are packed. What is kept stays. Safe for
 * several threads.
 */
public final class Stower {
    private final Checker checker;
    private final RackMemory racks = new RackMemory();

    public Stower(Checker checker) {
        this.checker = checker;
    }

    /** Finds places and checks the layout from scratch. The same layout and seed give the same places. */
    public Stowing stow(Layout layout, long seed) {
        Layout stowed = arranged(layout, seed);
        Interiors interiors = Interiors.of(stowed);
        List<PieceSpec> toPlace = new ArrayList<>(interiors.rackedToPlace());
        toPlace.addAll(interiors.looseToPlace());
        int racked = interiors.racks().values().stream().mapToInt(List::size).sum();
        int loose = interiors.stowages().values().stream().mapToInt(List::size).sum();
        return new Stowing(stowed, checker.check(stowed), racked, loose, toPlace);
    }

    /** The layout with a place for every piece that finds one, not yet checked; the same layout if its brief lists no pieces. */
    public Layout arranged(Layout layout, long seed) {
        if (layout.brief().listed().isEmpty()) {
            return layout;
        }
        Scene scene = checker.scene(standing(layout));
        List<PiecePlace> places = new ArrayList<>(new RackArranger(scene, racks).arrange(seed));
        places.addAll(new PieceStower(scene).stow(seed));
        Map<String, PiecePlace> byPiece = new LinkedHashMap<>();
        places.forEach(place -> byPiece.put(place.piece(), place));
        Map<String, PiecePlace> ordered = new LinkedHashMap<>();
        for (PieceSpec spec : layout.brief().listed().pieces()) {
            PiecePlace place = byPiece.get(spec.id());
            if (place != null) {
                ordered.put(spec.id(), place);
            }
        }
        return layout.withContents(layout.contents().withPlaces(ordered));
    }

    /** The layout with every unit somewhere, so that heights in racks are known before places are found. */
    private static Layout standing(Layout layout) {
        Layout all = layout;
        for (UnitSpec unit : layout.brief().units()) {
            if (!layout.placements().containsKey(unit.id())) {
                all = all.with(Placement.of(unit.id(), Place.onFloor(Pose.at(Point.ORIGIN))));
            }
        }
        return all;
    }
}
