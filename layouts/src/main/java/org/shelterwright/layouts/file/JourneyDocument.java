package org.shelterwright.layouts.file;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.ContentHash;
import org.shelterwright.catalog.transit.FrictionTable;
import org.shelterwright.catalog.transit.LashingKind;
import org.shelterwright.catalog.transit.LineCategories;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.scene.JourneyParts;

/**
 * A journey as it stands in its file.
 *
 * @param copies what it uses of the catalog and of other files; {@code null} of a journey written by hand
 */
public record JourneyDocument(Journey journey, @Nullable Copies copies) {
    /**
     * What a journey uses.
     *
     * @param sha256 hash of what the entries said when they were copied
     */
    public record Copies(
            String sha256,
            List<LayoutCopy> layouts,
            List<TransitCar> cars,
            List<Outline> outlines,
            List<LashingKind> lashings,
            List<LineCategories> lineCategories,
            List<FrictionTable> frictions) {
        public Copies {
            layouts = List.copyOf(layouts);
            cars = List.copyOf(cars);
            outlines = List.copyOf(outlines);
            lashings = List.copyOf(lashings);
            lineCategories = List.copyOf(lineCategories);
            frictions = List.copyOf(frictions);
        }

        Transit transit() {
            return new Transit(cars, outlines, lashings, lineCategories, frictions, List.of());
        }

        /** The hash of the entries as they are. */
        String hash() {
            StringBuilder all = new StringBuilder();
            layouts.forEach(
                    one -> all.append(one.from()).append(ContentHash.of(LayoutFormats.LAYOUT.write(one.layout()))));
            cars.forEach(one -> all.append(ContentHash.of(CatalogFormats.TRANSIT_CAR, one)));
            outlines.forEach(one -> all.append(ContentHash.of(CatalogFormats.OUTLINE, one)));
            lashings.forEach(one -> all.append(ContentHash.of(CatalogFormats.LASHING, one)));
            lineCategories.forEach(one -> all.append(ContentHash.of(CatalogFormats.LINE_CATEGORIES, one)));
            frictions.forEach(one -> all.append(ContentHash.of(CatalogFormats.FRICTION, one)));
            return ContentHash.of(all.toString().getBytes(StandardCharsets.UTF_8));
        }

        private Copies hashed() {
            return new Copies(hash(), layouts, cars, outlines, lashings, lineCategories, frictions);
        }
    }

    /**
     * A layout.
     *
     * @param from the name that pieces give it
     */
    public record LayoutCopy(String from, LayoutDocument layout) {}

    /** The document of a journey, with copies of whatever may be used in planning it. */
    static JourneyDocument whole(Journey journey, JourneyParts parts, @Nullable Set<String> cars) {
        Transit transit = parts.transit();
        List<LayoutCopy> copies = new ArrayList<>();
        parts.layouts().forEach((from, layout) -> copies.add(new LayoutCopy(from, LayoutDocument.of(layout))));
        return new JourneyDocument(
                journey,
                new Copies(
                                "",
                                copies,
                                transit.cars().stream()
                                        .filter(one -> cars == null || cars.contains(one.id()))
                                        .toList(),
                                transit.outlines(),
                                transit.lashings(),
                                transit.lineCategories(),
                                transit.frictions())
                        .hashed());
    }

    /** The document of a journey, with copies of all that it uses. */
    static JourneyDocument of(Journey journey, JourneyParts parts) {
        Set<String> layouts = new LinkedHashSet<>();
        Set<String> cars = new LinkedHashSet<>();
        Set<String> outlines = new LinkedHashSet<>();
        Set<String> lashings = new LinkedHashSet<>();
        for (Piece piece : journey.pieces()) {
            String from = piece.layout();
            if (from != null) {
                layouts.add(from);
            }
        }
        for (Load load : journey.loads()) {
            cars.add(load.car());
            load.lashings().stream().map(Lashing::kind).forEach(lashings::add);
        }
        for (Leg leg : journey.legs()) {
            String outline = leg.outline();
            if (outline != null) {
                outlines.add(outline);
            }
        }
        Transit transit = parts.transit();
        List<LayoutCopy> copies = new ArrayList<>();
        for (String from : layouts) {
            Layout layout = parts.layouts().get(from);
            if (layout != null) {
                copies.add(new LayoutCopy(from, LayoutDocument.of(layout)));
            }
        }
        return new JourneyDocument(
                journey,
                new Copies(
                                "",
                                copies,
                                transit.cars().stream()
                                        .filter(one -> cars.contains(one.id()))
                                        .toList(),
                                transit.outlines().stream()
                                        .filter(one -> outlines.contains(one.id()))
                                        .toList(),
                                transit.lashings().stream()
                                        .filter(one -> lashings.contains(one.id()))
                                        .toList(),
                                transit.lineCategories(),
                                transit.frictions())
                        .hashed());
    }
}
