package org.shelterwright.layouts.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.ContentHash;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.plausible.BodyOddities;
import org.shelterwright.catalog.plausible.CableOddities;
import org.shelterwright.catalog.plausible.CarrierOddities;
import org.shelterwright.catalog.plausible.ItemOddities;
import org.shelterwright.catalog.plausible.Oddity;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.file.LayoutDocument.CableCopy;
import org.shelterwright.layouts.file.LayoutDocument.CarrierCopy;
import org.shelterwright.layouts.file.LayoutDocument.Copies;
import org.shelterwright.layouts.file.LayoutDocument.ItemCopy;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.layout.Route;

/** Puts the layout of a file together, after its parts and placements were held against its brief. */
final class LayoutAssembly {
    /** Farthest that a unit may lie from the origin of the body (µm): 100 m. */
    private static final int FARTHEST = 100 * Lengths.M;

    private static final int MOST_CARRIED = 16;

    private final LayoutDocument document;
    private final Places places;
    private final Findings findings;
    private final Map<String, Item> items = new LinkedHashMap<>();
    private final Map<String, Placement> placements = new LinkedHashMap<>();
    private final Map<String, Cable> cables = new LinkedHashMap<>();

    LayoutAssembly(LayoutDocument document, Places places, Findings findings) {
        this.document = document;
        this.places = places;
        this.findings = findings;
    }

    Layout layout() {
        takeItems();
        takeCables();
        takeBodyAndCarriers();
        requireCarrier(document.brief().carrier(), document.parts().carrier(), "carrier");
        Trailer trailer = document.brief().trailer();
        requireCarrier(
                trailer == null ? null : trailer.carrier(), document.parts().trailer(), "trailer");
        findings.requireUsable();
        new BriefReferences(document.brief(), places.key("brief"), catalog(), findings).check();
        takePlacements();
        Map<String, Route> routes = new RouteReferences(document, cables, places.key("routes"), findings).routes();
        takeOrder(document.boltDown());
        Contents contents =
                new ContentsAssembly(document.brief(), items, places.key("contents"), findings)
                        .contents(document.contents());
        findings.requireUsable();
        Copies parts = document.parts();
        return new Layout(
                document.brief(),
                new Parts(parts.body().entry(), entry(parts.carrier()), entry(parts.trailer()), items, cables),
                placements,
                routes,
                document.acceptances(),
                document.provenance(),
                document.boltDown(),
                contents);
    }

    private void takeItems() {
        Places list = places.key("parts").key("items");
        List<ItemCopy> copies = document.parts().items();
        for (int i = 0; i < copies.size(); i++) {
            Item item = copies.get(i).entry();
            Places at = list.index(i);
            if (items.putIfAbsent(item.id(), item) != null) {
                findings.refuse(
                        at.key("entry").key("id"),
                        "The item id \"" + item.id() + "\" is given twice among the parts. Remove one of them.");
            }
            hold(CatalogFormats.ITEM, copies.get(i).sha256(), item, "item \"" + item.id() + "\"", at, ItemOddities::of);
        }
    }

    private void takeCables() {
        Places list = places.key("parts").key("cables");
        List<CableCopy> copies = document.parts().cables();
        for (int i = 0; i < copies.size(); i++) {
            Cable cable = copies.get(i).entry();
            Places at = list.index(i);
            if (cables.putIfAbsent(cable.id(), cable) != null) {
                findings.refuse(
                        at.key("entry").key("id"),
                        "The cable id \"" + cable.id() + "\" is given twice among the parts. Remove one of them.");
            }
            String name = "cable \"" + cable.id() + "\"";
            hold(CatalogFormats.CABLE, copies.get(i).sha256(), cable, name, at, CableOddities::of);
        }
    }

    private void takeBodyAndCarriers() {
        Places at = places.key("parts");
        LayoutDocument.BodyCopy body = document.parts().body();
        String name = "body \"" + body.entry().id() + "\"";
        hold(CatalogFormats.BODY, body.sha256(), body.entry(), name, at.key("body"), BodyOddities::of);
        hold(document.parts().carrier(), at.key("carrier"));
        hold(document.parts().trailer(), at.key("trailer"));
    }

    private void requireCarrier(@Nullable String named, @Nullable CarrierCopy copy, String key) {
        if (!Objects.equals(named, copy == null ? null : copy.entry().id())) {
            findings.refuse(
                    places.key("parts").key(key),
                    "The " + key + " of the brief is " + (named == null ? "none" : "\"" + named + "\"")
                            + ", but the parts hold "
                            + (copy == null ? "none" : "\"" + copy.entry().id() + "\"") + ". Make them the same.");
        }
    }

    private void hold(@Nullable CarrierCopy copy, Places at) {
        if (copy != null) {
            String name = "carrier \"" + copy.entry().id() + "\"";
            hold(CatalogFormats.CARRIER, copy.sha256(), copy.entry(), name, at, CarrierOddities::of);
        }
    }

    private <T> void hold(
            JsonFormat<T> format, String sha256, T entry, String name, Places at, Function<T, List<Oddity>> oddities) {
        if (!ContentHash.of(format, entry).equals(sha256)) {
            findings.doubt(
                    at.key("sha256"),
                    "The copy of " + name + " in this file was changed since the program saved it. Look at it before"
                            + " trusting its figures.");
        }
        for (Oddity oddity : oddities.apply(entry)) {
            Places key = at.key("entry").key(oddity.key());
            if (oddity.absurd()) {
                findings.refuse(key, oddity.sentence());
            } else {
                findings.doubt(key, oddity.sentence());
            }
        }
    }

    private Catalog catalog() {
        List<Carrier> carriers = new ArrayList<>();
        Carrier carrier = entry(document.parts().carrier());
        Carrier trailer = entry(document.parts().trailer());
        if (carrier != null) {
            carriers.add(carrier);
        }
        if (trailer != null && (carrier == null || !carrier.id().equals(trailer.id()))) {
            carriers.add(trailer);
        }
        return Catalog.of(
                items.values(),
                List.of(document.parts().body().entry()),
                carriers,
                cables.values(),
                List.of(),
                Transit.NONE);
    }

    private void takePlacements() {
        Set<String> known = BriefReferences.ids(document.brief().units(), UnitSpec::id);
        for (int i = 0; i < document.placements().size(); i++) {
            Placement placement = document.placements().get(i);
            Places at = places.key("placements").index(i);
            if (!BriefReferences.known(placement.unit(), known, "unit", at.key("unit"), findings)) {
                continue;
            }
            if (placements.putIfAbsent(placement.unit(), placement) != null) {
                findings.refuse(
                        at.key("unit"),
                        "The unit \"" + placement.unit() + "\" is placed twice. Remove one of the placements.");
            }
        }
        for (int i = 0; i < document.placements().size(); i++) {
            Placement placement = document.placements().get(i);
            Places at = places.key("placements").index(i);
            host(placement, placement.station(), at.key("station"));
            Place road = placement.road();
            if (road != null) {
                host(placement, road, at.key("road"));
            }
            if (!endsOnTheBody(placement)) {
                findings.refuse(
                        at,
                        "The unit \"" + placement.unit() + "\" is carried by itself in the end, or through more than "
                                + MOST_CARRIED + " other units. Give it another host.");
            }
        }
    }

    private void takeOrder(@Nullable BoltDownOrder order) {
        if (order == null) {
            return;
        }
        Set<String> known = BriefReferences.ids(document.brief().units(), UnitSpec::id);
        Places at = places.key("boltDown");
        for (int i = 0; i < order.steps().size(); i++) {
            BriefReferences.known(
                    order.steps().get(i).unit(),
                    known,
                    "unit",
                    at.key("steps").index(i).key("unit"),
                    findings);
        }
        for (int i = 0; i < order.before().size(); i++) {
            Places one = at.key("before").index(i);
            BriefReferences.known(order.before().get(i).first(), known, "unit", one.key("first"), findings);
            BriefReferences.known(order.before().get(i).then(), known, "unit", one.key("then"), findings);
        }
    }

    private void host(Placement placement, Place place, Places at) {
        if (place.host() != null && !placements.containsKey(place.host())) {
            findings.refuse(
                    at.key("host"),
                    "The unit \"" + placement.unit() + "\" is mounted on or under the unit \"" + place.host()
                            + "\", which is not placed. Place that one too, or give another host.");
        }
        Point low = place.pose().at();
        if (Math.max(Math.abs(low.x()), Math.max(Math.abs(low.y()), Math.abs(low.z()))) > FARTHEST) {
            findings.refuse(
                    at.key("pose").key("at"),
                    "The unit \"" + placement.unit()
                            + "\" lies more than 100 m from the body. Lengths are in millimetres:" + " correct it.");
        }
    }

    private boolean endsOnTheBody(Placement start) {
        for (Situation situation : Situation.values()) {
            Placement at = start;
            for (int steps = 0; at != null; steps++) {
                if (steps > MOST_CARRIED) {
                    return false;
                }
                String host = at.in(situation).host();
                at = host == null ? null : placements.get(host);
            }
        }
        return true;
    }

    private static @Nullable Carrier entry(@Nullable CarrierCopy copy) {
        return copy == null ? null : copy.entry();
    }
}
