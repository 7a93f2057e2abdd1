package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Placement;

/** The units of a layout, found and replaced. */
final class Units {
    private Units() {}

    static UnitSpec require(Layout layout, String unit) {
        List<UnitSpec> units = layout.brief().units();
        return units.stream()
                .filter(one -> one.id().equals(unit))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The brief has no unit \"" + unit + "\"."
                        + NearestName.hint(
                                unit, units.stream().map(UnitSpec::id).toList())));
    }

    static Placement placed(Layout layout, String unit) {
        require(layout, unit);
        Placement placement = layout.placements().get(unit);
        if (placement == null) {
            throw new IllegalArgumentException("The unit \"" + unit + "\" is not placed yet. Put it at a place first.");
        }
        return placement;
    }

    /** The units of the body, then those that ride on the trailer. */
    static List<UnitSpec> ofAll(Brief brief) {
        Trailer trailer = brief.trailer();
        Stream<UnitSpec> loads =
                trailer == null ? Stream.empty() : trailer.loads().stream().map(TrailerLoad::unit);
        return Stream.concat(brief.units().stream(), loads).toList();
    }

    static Layout with(Layout old, Brief brief, Map<String, Item> items) {
        Parts parts =
                new Parts(old.parts().body(), old.parts().carrier(), old.parts().trailer(), new LinkedHashMap<>(items));
        return new Layout(brief, parts, old.placements(), old.acceptances(), old.provenance());
    }

    static Layout with(Layout old, List<Acceptance> acceptances) {
        return new Layout(old.brief(), old.parts(), old.placements(), acceptances, old.provenance());
    }
}
