package org.shelterwright.layouts.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.ContentHash;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.plausible.Oddity;
import org.shelterwright.catalog.plausible.PieceOddities;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.file.LayoutDocument.ContentsCopy;
import org.shelterwright.layouts.file.LayoutDocument.PieceCopy;
import org.shelterwright.layouts.inside.Interiors;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.PiecePlace;

/** Puts the contents of a layout's file together, after they were held against its brief and its items. */
final class ContentsAssembly {
    private final Brief brief;
    private final Map<String, Item> items;
    private final Places places;
    private final Findings findings;
    private final Map<String, Piece> kinds = new LinkedHashMap<>();
    private final Map<String, PiecePlace> taken = new LinkedHashMap<>();

    /** @param places those of the contents in the file */
    ContentsAssembly(Brief brief, Map<String, Item> items, Places places, Findings findings) {
        this.brief = brief;
        this.items = items;
        this.places = places;
        this.findings = findings;
    }

    Contents contents(@Nullable ContentsCopy copy) {
        if (copy == null && brief.listed().isEmpty()) {
            return Contents.NONE;
        }
        takeKinds(copy == null ? List.of() : copy.kinds());
        requireKinds();
        takePlaces(copy == null ? List.of() : copy.places());
        return new Contents(kinds, taken);
    }

    private void takeKinds(List<PieceCopy> copies) {
        for (int i = 0; i < copies.size(); i++) {
            Piece piece = copies.get(i).entry();
            Places at = places.key("kinds").index(i);
            if (kinds.putIfAbsent(piece.id(), piece) != null) {
                findings.refuse(
                        at.key("entry").key("id"),
                        "The piece id \"" + piece.id() + "\" is given twice among the contents. Remove one of them.");
            }
            if (!ContentHash.of(CatalogFormats.PIECE, piece).equals(copies.get(i).sha256())) {
                findings.doubt(
                        at.key("sha256"),
                        "The copy of piece \"" + piece.id() + "\" in this file was changed since the program saved it."
                                + " Look at it before trusting its figures.");
            }
            for (Oddity oddity : PieceOddities.of(piece)) {
                Places key = at.key("entry").key(oddity.key());
                if (oddity.absurd()) {
                    findings.refuse(key, oddity.sentence());
                } else {
                    findings.doubt(key, oddity.sentence());
                }
            }
        }
    }

    private void requireKinds() {
        for (PieceSpec spec : brief.listed().pieces()) {
            BriefReferences.known(spec.kind(), kinds.keySet(), "kind of piece", places, findings);
        }
    }

    private void takePlaces(List<PiecePlace> all) {
        Set<String> pieces = BriefReferences.ids(brief.listed().pieces(), PieceSpec::id);
        Map<String, UnitSpec> units = new LinkedHashMap<>();
        brief.units().forEach(unit -> units.put(unit.id(), unit));
        for (int i = 0; i < all.size(); i++) {
            PiecePlace place = all.get(i);
            Places at = places.key("places").index(i);
            if (!BriefReferences.known(place.piece(), pieces, "piece", at.key("piece"), findings)
                    || !BriefReferences.known(place.unit(), units.keySet(), "unit", at.key("unit"), findings)) {
                continue;
            }
            if (taken.putIfAbsent(place.piece(), place) != null) {
                findings.refuse(
                        at.key("piece"),
                        "The piece \"" + place.piece() + "\" is stowed twice. Remove one of the places.");
            }
            UnitSpec unit = units.get(place.unit());
            Item item = unit == null ? null : items.get(unit.item());
            if (item != null) {
                place(place, item, at);
            }
        }
    }

    private void place(PiecePlace place, Item item, Places at) {
        Set<String> names = place.racked()
                ? BriefReferences.ids(item.bays(), RackBay::name)
                : BriefReferences.ids(item.stowages(), Stowage::name);
        String kind = place.racked() ? "bay" : "stowage place";
        if (!BriefReferences.known(place.place(), names, kind + " of item " + item.id(), at.key("place"), findings)) {
            return;
        }
        PieceSpec spec = brief.listed().piece(place.piece()).orElse(null);
        Piece piece = spec == null ? null : kinds.get(spec.kind());
        if (piece == null) {
            return;
        }
        if (place.racked() != (piece.rack() != null)) {
            findings.refuse(
                    at,
                    "The piece \"" + place.piece() + "\" is " + (place.racked() ? "loose" : "rack-mounted")
                            + ", and cannot ride in a " + kind + ". Give it another place.");
        } else if (spec != null && Interiors.held(spec, piece, place, item) == null) {
            findings.refuse(
                    at.key("lowest"),
                    "The piece \"" + place.piece() + "\" reaches beyond the height units of the bay. Put it lower.");
        }
    }
}
