package org.shelterwright.layouts.inside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.piece.Loose;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.piece.RackMount;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Posture;

/**
 * The insides of all units of a layout. A piece whose place its unit does not have counts as one without a place. Immutable.
 */
public final class Interiors {
    private final Map<String, List<InRack>> racks = new LinkedHashMap<>();
    private final Map<String, List<InPlace>> stowages = new LinkedHashMap<>();
    private final List<PieceSpec> rackedToPlace = new ArrayList<>();
    private final List<PieceSpec> looseToPlace = new ArrayList<>();
    private final boolean anyRacked;
    private final boolean anyLoose;

    private Interiors(Layout layout) {
        Map<String, UnitSpec> units = new LinkedHashMap<>();
        layout.brief().units().forEach(unit -> units.put(unit.id(), unit));
        Contents contents = layout.contents();
        boolean racked = false;
        boolean loose = false;
        for (PieceSpec spec : layout.brief().listed().pieces()) {
            Piece piece = contents.kinds().get(spec.kind());
            if (piece == null) {
                looseToPlace.add(spec);
                loose = true;
                continue;
            }
            racked |= piece.rack() != null;
            loose |= piece.loose() != null;
            PiecePlace place = contents.places().get(spec.id());
            UnitSpec unit = place == null ? null : units.get(place.unit());
            Held held = place == null || unit == null ? null : held(spec, piece, place, layout.item(unit));
            if (held instanceof InRack in) {
                racks.computeIfAbsent(in.place().unit(), key -> new ArrayList<>())
                        .add(in);
            } else if (held instanceof InPlace in) {
                stowages.computeIfAbsent(in.place().unit(), key -> new ArrayList<>())
                        .add(in);
            } else {
                (piece.rack() != null ? rackedToPlace : looseToPlace).add(spec);
            }
        }
        anyRacked = racked;
        anyLoose = loose;
    }

    /** Resolves the contents of a layout. Cost: linear in the pieces. */
    public static Interiors of(Layout layout) {
        return new Interiors(layout);
    }

    /** A piece in a unit of an item; {@code null} if the item has no such place for it. */
    public static @Nullable Held held(PieceSpec spec, Piece piece, PiecePlace place, Item item) {
        RackMount mount = piece.rack();
        Integer lowest = place.lowest();
        if (mount != null && lowest != null) {
            Optional<RackBay> bay = item.bay(place.place());
            return bay.isPresent() && lowest + mount.units() - 1 <= bay.get().units()
                    ? new InRack(spec, piece, mount, place, bay.get(), lowest)
                    : null;
        }
        Loose loose = piece.loose();
        Point at = place.at();
        Posture posture = place.posture();
        if (loose != null && at != null && posture != null) {
            Optional<Stowage> stowage = item.stowage(place.place());
            return stowage.isPresent() ? new InPlace(spec, piece, loose, place, stowage.get(), at, posture) : null;
        }
        return null;
    }

    /** Rack-mounted pieces of a unit, in the order of the brief. */
    public List<InRack> racked(String unit) {
        return racks.getOrDefault(unit, List.of());
    }

    /** Loose pieces in a unit, in the order of the brief. */
    public List<InPlace> stowed(String unit) {
        return stowages.getOrDefault(unit, List.of());
    }

    /** All pieces that ride in a unit. */
    public List<Held> held(String unit) {
        List<Held> all = new ArrayList<>(racked(unit));
        all.addAll(stowed(unit));
        return all;
    }

    /** The units that hold rack-mounted pieces, with them. */
    public Map<String, List<InRack>> racks() {
        return racks;
    }

    /** The units that hold loose pieces, with them. */
    public Map<String, List<InPlace>> stowages() {
        return stowages;
    }

    /** The rack-mounted pieces that are not where the brief asks them to be. */
    public Unplaced rackedUnplaced() {
        return Unplaced.of(rackedToPlace, racks);
    }

    /** The loose pieces that are not where the brief asks them to be. */
    public Unplaced looseUnplaced() {
        return Unplaced.of(looseToPlace, stowages);
    }

    public List<PieceSpec> rackedToPlace() {
        return rackedToPlace;
    }

    public List<PieceSpec> looseToPlace() {
        return looseToPlace;
    }

    /** Whether the brief lists any rack-mounted piece. */
    public boolean anyRacked() {
        return anyRacked;
    }

    /** Whether the brief lists any loose piece. */
    public boolean anyLoose() {
        return anyLoose;
    }
}
