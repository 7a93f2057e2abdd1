package org.shelterwright.solver.inside;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/** Lockers with drawers in a row, and small pieces that shall go into them. */
public final class Lockers {
    private static final Catalog CATALOG = BuiltInCatalog.read();
    private static final List<String> SMALL =
            List.of("field-radio", "filter-pack", "cord-set", "eye-shields", "first-aid-kit");

    private Lockers() {}

    /** Lockers with drawers in rows of eight, and as many small pieces as asked. */
    public static Layout of(int lockers, int pieces) {
        List<UnitSpec> units = new ArrayList<>();
        Map<String, Placement> placements = new TreeMap<>();
        for (int i = 0; i < lockers; i++) {
            String id = "locker-" + i;
            units.add(new UnitSpec(id, "Locker " + i, "gauge-locker-drawers", "storage"));
            placements.put(id, Placement.of(id, Place.onFloor(Pose.at(Point.ofMm(710 * (i % 8), 750 * (i / 8), 0)))));
        }
        List<PieceSpec> specs = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            specs.add(PieceSpec.of("p" + i, "Piece " + i, SMALL.get(i % SMALL.size())));
        }
        Brief brief = Brief.named("lockers", "Lockers", "container-20")
                .units(units)
                .ruleSets(List.of("shelter-common"))
                .inventory(pieces == 0 ? null : new Inventory(List.of(), specs))
                .build();
        return Layout.empty(brief, Parts.of(brief, CATALOG))
                .withPlacements(placements)
                .withContents(Contents.of(brief, CATALOG));
    }
}
