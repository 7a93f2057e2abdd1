package org.shelterwright.layouts.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.rules.RuleSet;

/** Holds a brief against the catalog before anything is laid out. */
public final class BriefCheck {
    private BriefCheck() {}

    /**
     * Finds what no layout could satisfy or make sense of: names that are not known, items that are larger than the body or
     * could land nowhere in it. Cost: linear in the brief, times the hard points of the body.
     *
     * @param places where the parts of the brief stood; see {@link LayoutFiles#unknownPlaces}
     * @param ruleSets the rule sets that there are
     */
    public static Findings of(Brief brief, Places places, Catalog catalog, List<RuleSet> ruleSets) {
        Findings findings = new Findings();
        if (brief.units().isEmpty()) {
            findings.refuse(places.key("units"), "The brief asks for no units. List at least one.");
        }
        new BriefReferences(brief, places, catalog, findings).check();
        new InventoryReferences(brief.listed(), places.key("inventory"), Set.of(), findings).kinds(catalog);
        Set<String> known = BriefReferences.ids(ruleSets, RuleSet::id);
        for (int i = 0; i < brief.ruleSets().size(); i++) {
            Places at = places.key("ruleSets").index(i);
            BriefReferences.known(brief.ruleSets().get(i), known, "rule set", at, findings);
        }
        if (brief.units().size() > BriefReferences.MOST_UNITS) {
            return findings;
        }
        catalog.body(brief.body()).ifPresent(body -> landing(brief, places, catalog, body, findings));
        crew(brief, places, catalog, findings);
        return findings;
    }

    private static void landing(Brief brief, Places places, Catalog catalog, Body body, Findings findings) {
        List<Item> items = new ArrayList<>();
        brief.units().forEach(unit -> catalog.item(unit.item()).ifPresent(items::add));
        for (int i = 0; i < brief.units().size(); i++) {
            UnitSpec unit = brief.units().get(i);
            Places at = places.key("units").index(i).key("item");
            catalog.item(unit.item())
                    .flatMap(item -> Landing.fault(item, body, items))
                    .ifPresent(
                            fault -> findings.refuse(at, "The unit \"" + unit.id() + "\" cannot be placed: " + fault));
        }
    }

    private static void crew(Brief brief, Places places, Catalog catalog, Findings findings) {
        Places at = places.key("crew");
        if (brief.crew() < 0) {
            findings.refuse(at, "The crew of " + brief.crew() + " must be at least 0.");
            return;
        }
        int seats = brief.carrier() == null
                ? 0
                : catalog.carrier(brief.carrier())
                        .map(Carrier::seats)
                        .orElse(List.of())
                        .size();
        if (seats > 0 && brief.crew() > seats) {
            findings.doubt(
                    at,
                    "The crew of " + brief.crew() + " is more than the " + seats + " seats of the cab. Is it right?");
        }
    }
}
