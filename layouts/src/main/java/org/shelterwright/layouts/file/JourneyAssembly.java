package org.shelterwright.layouts.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.plausible.Oddity;
import org.shelterwright.catalog.plausible.TransitCarOddities;
import org.shelterwright.catalog.transit.LashingKind;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.file.JourneyDocument.Copies;
import org.shelterwright.layouts.file.JourneyDocument.LayoutCopy;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.scene.JourneyParts;

/** Finds what a journey refers to: in its own copies first. */
final class JourneyAssembly {
    private final JourneyDocument document;
    private final Places places;
    private final Catalog catalog;
    private final JourneyFiles.LayoutSource source;
    private final Findings findings;

    JourneyAssembly(
            JourneyDocument document,
            Places places,
            Catalog catalog,
            JourneyFiles.LayoutSource source,
            Findings findings) {
        this.document = document;
        this.places = places;
        this.catalog = catalog;
        this.source = source;
        this.findings = findings;
    }

    JourneyParts parts() {
        Map<String, Layout> layouts = new LinkedHashMap<>();
        Transit transit = catalog.transit();
        Copies copies = document.copies();
        if (copies != null) {
            Places at = places.key("copies");
            transit = transit(copies, at);
            for (int i = 0; i < copies.layouts().size(); i++) {
                LayoutCopy copy = copies.layouts().get(i);
                Places own = at.key("layouts").index(i).key("layout");
                layouts.put(copy.from(), new LayoutAssembly(copy.layout(), own, findings).layout());
            }
        }
        for (int i = 0; i < document.journey().pieces().size() && !findings.full(); i++) {
            Piece piece = document.journey().pieces().get(i);
            String from = piece.layout();
            if (from != null && !layouts.containsKey(from)) {
                take(from, places.key("journey").key("pieces").index(i).key("layout"), layouts);
            }
        }
        return new JourneyParts(transit, layouts);
    }

    private void take(String from, Places at, Map<String, Layout> layouts) {
        try {
            InputFile file = source.layout(from);
            OpenedLayout opened = LayoutFiles.read(file);
            opened.doubts().forEach(doubt -> findings.doubt(at, doubt.text()));
            layouts.put(from, opened.layout());
        } catch (InputException e) {
            for (Problem problem : e.problems()) {
                findings.refuse(at, "The layout \"" + from + "\" cannot be used: " + problem.text());
            }
        }
    }

    private Transit transit(Copies copies, Places at) {
        if (!copies.sha256().equals(copies.hash())) {
            findings.doubt(
                    at.key("sha256"),
                    "The copies in this file were changed since the program saved it. Look at them before trusting their"
                            + " figures.");
        }
        for (int i = 0; i < copies.cars().size(); i++) {
            Places own = at.key("cars").index(i);
            for (Oddity oddity : TransitCarOddities.of(copies.cars().get(i))) {
                if (oddity.absurd()) {
                    findings.refuse(own.key(oddity.key()), oddity.sentence());
                } else {
                    findings.doubt(own.key(oddity.key()), oddity.sentence());
                }
            }
        }
        Transit base = catalog.transit();
        changed("transit car", copies.cars(), base.cars(), TransitCar::id, CatalogFormats.TRANSIT_CAR, at.key("cars"));
        changed("outline", copies.outlines(), base.outlines(), Outline::id, CatalogFormats.OUTLINE, at.key("outlines"));
        changed(
                "lashing",
                copies.lashings(),
                base.lashings(),
                LashingKind::id,
                CatalogFormats.LASHING,
                at.key("lashings"));
        try {
            return copies.transit().over(base);
        } catch (IllegalArgumentException e) {
            findings.refuse(at, String.valueOf(e.getMessage()));
            return base;
        }
    }

    private <T> void changed(
            String kind, List<T> copies, List<T> now, Function<T, String> id, JsonFormat<T> format, Places at) {
        for (int i = 0; i < copies.size(); i++) {
            T copy = copies.get(i);
            for (T other : now) {
                if (id.apply(other).equals(id.apply(copy)) && !other.equals(copy)) {
                    findings.doubt(
                            at.index(i),
                            "The " + kind + " \"" + id.apply(copy)
                                    + "\" of the catalog differs from the copy in this journey ("
                                    + String.join(", ", format.differingKeys(copy, other))
                                    + "). The copy is used.");
                }
            }
        }
    }
}
