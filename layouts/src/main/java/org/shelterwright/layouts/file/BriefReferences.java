package org.shelterwright.layouts.file;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.EntryPanel;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.brief.Wish;
import org.shelterwright.layouts.rules.Figure;

/** Holds whatever a brief names against what there is. */
final class BriefReferences {
    /** Most units of one brief; a fit-out has some tens, and what is quick for these must not hang on more. */
    static final int MOST_UNITS = 5_000;

    private final Brief brief;
    private final Places places;
    private final Catalog catalog;
    private final Findings findings;
    private final Map<String, Item> units = new HashMap<>();
    private final Set<String> ids = new LinkedHashSet<>();
    private final Set<String> items;
    private final Set<String> carriers;

    BriefReferences(Brief brief, Places places, Catalog catalog, Findings findings) {
        this.brief = brief;
        this.places = places;
        this.catalog = catalog;
        this.findings = findings;
        this.items = ids(catalog.items(), Item::id);
        this.carriers = ids(catalog.carriers(), Carrier::id);
    }

    static <T> Set<String> ids(Collection<T> things, Function<T, String> id) {
        return things.stream().map(id).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    static boolean known(String id, Collection<String> known, String kind, Places at, Findings findings) {
        if (known.contains(id)) {
            return true;
        }
        if (!findings.full()) {
            findings.refuse(at, "The " + kind + " \"" + id + "\" is not known." + NearestName.hint(id, known));
        }
        return false;
    }

    void check() {
        if (brief.units().size() > MOST_UNITS) {
            findings.refuse(
                    places.key("units"),
                    "The brief asks for " + brief.units().size() + " units; at most " + MOST_UNITS
                            + " are taken. Split it.");
            return;
        }
        known(brief.body(), ids(catalog.bodies(), Body::id), "body", places.key("body"), findings);
        if (brief.carrier() != null) {
            carrier(brief.carrier(), places.key("carrier"));
        }
        for (int i = 0; i < brief.units().size(); i++) {
            unit(brief.units().get(i), places.key("units").index(i));
        }
        Trailer trailer = brief.trailer();
        if (trailer != null) {
            towed(trailer.carrier(), places.key("trailer").key("carrier"));
            for (int i = 0; i < trailer.loads().size(); i++) {
                unit(
                        trailer.loads().get(i).unit(),
                        places.key("trailer").key("loads").index(i).key("unit"));
            }
        }
        Set<String> own = ids(brief.units(), UnitSpec::id);
        for (int i = 0; i < brief.occupants().size(); i++) {
            Places at = places.key("occupants").index(i).key("unit");
            known(brief.occupants().get(i).unit(), own, "unit", at, findings);
        }
        for (int i = 0; i < brief.wishes().size(); i++) {
            wish(brief.wishes().get(i), own, places.key("wishes").index(i));
        }
        wires();
        limits();
        if (brief.inventory() != null) {
            new InventoryReferences(brief.inventory(), places.key("inventory"), own, findings)
                    .check(catalog.body(brief.body()).orElse(null));
        }
        if (brief.services() != null) {
            new ServiceReferences(brief.services(), places.key("services"), ids, findings).check();
        }
    }

    private void carrier(String id, Places at) {
        known(id, carriers, "carrier", at, findings);
    }

    /** Nothing tows itself, in one step or in more: what is drawn is a trailer, and what draws it a truck. */
    private void towed(String id, Places at) {
        if (!known(id, carriers, "carrier", at, findings)) {
            return;
        }
        boolean truck = catalog.carrier(id).map(Carrier::kind).orElse(null) == Carrier.Kind.TRUCK;
        if (id.equals(brief.carrier())) {
            findings.refuse(
                    at,
                    "The trailer \"" + id + "\" is the carrier itself, and nothing tows itself. Name another carrier"
                            + " entry, of a trailer.");
        } else if (truck) {
            findings.refuse(
                    at,
                    "The trailer \"" + id + "\" is a truck, which is not towed. Name a carrier entry of a trailer.");
        }
    }

    private void unit(UnitSpec unit, Places at) {
        if (!ids.add(unit.id())) {
            findings.refuse(at.key("id"), "The unit id \"" + unit.id() + "\" is given twice. Rename one of them.");
        }
        if (known(unit.item(), items, "item", at.key("item"), findings)) {
            catalog.item(unit.item()).ifPresent(item -> units.putIfAbsent(unit.id(), item));
        }
    }

    private void wish(Wish wish, Set<String> own, Places at) {
        for (int i = 0; i < wish.units().size(); i++) {
            known(wish.units().get(i), own, "unit", at.key("units").index(i), findings);
        }
        Wish.Kind kind = wish.kind();
        boolean spaced = kind == Wish.Kind.NEAR || kind == Wish.Kind.APART;
        boolean faced = kind == Wish.Kind.FACING || kind == Wish.Kind.ALONG_WALL || kind == Wish.Kind.ORDER_ALONG_WALL;
        int least = kind.leastUnits();
        if (wish.units().size() < least) {
            findings.refuse(
                    at.key("units"),
                    "This wish names " + wish.units().size() + " units; it needs at least " + least + ".");
        }
        Integer distance = wish.distance();
        if (spaced && (distance == null || distance < 0)) {
            findings.refuse(at, "A wish for units near each other or apart needs a \"distance\" of at least 0 mm.");
        }
        if (faced && (wish.face() == null || !wish.face().upright())) {
            findings.refuse(at, "This wish needs a \"face\": front, rear, left or right.");
        }
    }

    private void wires() {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < brief.wires().size(); i++) {
            Wire wire = brief.wires().get(i);
            Places at = places.key("wires").index(i);
            if (!seen.add(wire.id())) {
                findings.refuse(at.key("id"), "The wire id \"" + wire.id() + "\" is given twice. Rename one of them.");
            }
            end(wire, wire.from(), at.key("from"));
            end(wire, wire.to(), at.key("to"));
            cable(wire, at);
        }
    }

    /** An unknown cable forbids nothing: the ledger then says that its wire is not assessed. */
    private void cable(Wire wire, Places at) {
        String panel = wire.panel();
        if (panel != null) {
            catalog.body(brief.body())
                    .ifPresent(body -> known(
                            panel,
                            ids(body.entryPanels(), EntryPanel::name),
                            "entry panel",
                            at.key("panel"),
                            findings));
        }
        if (catalog.cables().isEmpty()) {
            return;
        }
        String type = wire.type();
        Set<String> names = ids(catalog.cables(), type == null ? Cable::family : Cable::id);
        String named = type == null ? wire.family() : type;
        if (named != null && !names.contains(named)) {
            findings.doubt(
                    at.key(type == null ? "family" : "type"),
                    "The cable " + (type == null ? "family " : "") + "\"" + named + "\" of wire \"" + wire.id()
                            + "\" is not in the catalog, so that its limits cannot be assessed."
                            + NearestName.hint(named, names));
        }
    }

    /** A wire ends at "unit/port", or at an entry panel, written "body/panel". */
    private void end(Wire wire, String end, Places at) {
        int slash = end.indexOf('/');
        if (slash < 1 || slash == end.length() - 1) {
            findings.refuse(
                    at,
                    "The end \"" + end + "\" of wire \"" + wire.id() + "\" must name a unit and its port, such as"
                            + " \"rack-1/power\", or an entry panel, such as \"body/panel 1\".");
            return;
        }
        String owner = end.substring(0, slash);
        if (!owner.equals("body") && !known(owner, ids, "unit", at, findings)) {
            return;
        }
        String name = end.substring(slash + 1);
        Item item = units.get(owner);
        Set<String> ports = item == null ? Set.of() : ids(item.ports(), Port::name);
        if (item != null && !ports.contains(name)) {
            findings.refuse(
                    at,
                    "The end \"" + end + "\" of wire \"" + wire.id() + "\" names a port that unit " + owner
                            + " does not have." + NearestName.hint(name, ports));
        } else if (owner.equals("body")) {
            catalog.body(brief.body())
                    .ifPresent(body ->
                            known(name, ids(body.entryPanels(), EntryPanel::name), "entry panel", at, findings));
        }
    }

    private void limits() {
        Set<String> known = ids(List.of(Figure.values()), Figure::id);
        for (Map.Entry<String, Double> limit : brief.limits().entrySet()) {
            Places at = places.key("limits").key(limit.getKey());
            known(limit.getKey(), known, "limit", at, findings);
        }
    }
}
