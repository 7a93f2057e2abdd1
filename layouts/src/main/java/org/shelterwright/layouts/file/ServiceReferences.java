package org.shelterwright.layouts.file;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.layouts.brief.Feed;
import org.shelterwright.layouts.brief.OperatingState;
import org.shelterwright.layouts.brief.Services;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.SupplyPair;

/** Holds whatever the services of a brief name against its units, supplies and states. */
final class ServiceReferences {
    private final Services services;
    private final Places places;
    private final Set<String> units;
    private final Set<String> supplies;
    private final Set<String> states;
    private final Findings findings;

    /** @param units ids of the units of the body and of the trailer */
    ServiceReferences(Services services, Places places, Set<String> units, Findings findings) {
        this.services = services;
        this.places = places;
        this.units = units;
        this.supplies = BriefReferences.ids(services.supplies(), Supply::id);
        this.states = BriefReferences.ids(services.states(), OperatingState::id);
        this.findings = findings;
    }

    void check() {
        for (int i = 0; i < services.states().size(); i++) {
            all(
                    services.states().get(i).live(),
                    supplies,
                    "supply",
                    places.key("states").index(i).key("live"));
        }
        for (int i = 0; i < services.supplies().size(); i++) {
            Supply supply = services.supplies().get(i);
            Places at = places.key("supplies").index(i);
            unit(supply.source(), at.key("source"));
            unit(supply.charger(), at.key("charger"));
            all(supply.fedFrom(), supplies, "supply", at.key("fedFrom"));
        }
        for (int i = 0; i < services.feeds().size(); i++) {
            feed(services.feeds().get(i), places.key("feeds").index(i));
        }
        for (int i = 0; i < services.apart().size(); i++) {
            SupplyPair pair = services.apart().get(i);
            unit(pair.a(), places.key("apart").index(i).key("a"));
            unit(pair.b(), places.key("apart").index(i).key("b"));
        }
    }

    private void feed(Feed feed, Places at) {
        unit(feed.unit(), at.key("unit"));
        BriefReferences.known(feed.supply(), supplies, "supply", at.key("supply"), findings);
        all(feed.idle(), states, "state", at.key("idle"));
        all(feed.off(), states, "state", at.key("off"));
        all(feed.needed(), states, "state", at.key("needed"));
    }

    private void unit(@Nullable String id, Places at) {
        if (id != null) {
            BriefReferences.known(id, units, "unit", at, findings);
        }
    }

    private void all(List<String> ids, Set<String> known, String kind, Places at) {
        for (int i = 0; i < ids.size(); i++) {
            BriefReferences.known(ids.get(i), known, kind, at.index(i), findings);
        }
    }
}
