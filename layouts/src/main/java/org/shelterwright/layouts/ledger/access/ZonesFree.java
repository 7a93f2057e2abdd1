package org.shelterwright.layouts.ledger.access;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.GoverningCase;
import org.shelterwright.layouts.ledger.mend.Separation;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * The clear zones of a unit, and the sweeps of its movable parts, are free of the solids of others: max over zones and
 * solids of the depth = 0. One row for each owner and intruder.
 *
 * <p>What stands on the owner's own top may stand in its service zone, since that is what the top is for; not in the way
 * of its lids, air or exits. A seat may stand in the seat zone of a work place.
 *
 * <p>Source: the clear zones of the items in the catalog.
 */
final class ZonesFree extends NamedLimit implements Limit.OfPair {
    ZonesFree() {
        super(
                "access.zone-free",
                Subject.ACCESS,
                "Clear zones",
                Severity.MEDIUM,
                Source.stated("Catalog", "clear zones and movable parts of the items"),
                "Every clear zone is free.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit a, PlacedUnit b, Rows rows) {
        assessOne(scene, a, b, rows);
        assessOne(scene, b, a, rows);
    }

    private void assessOne(Scene scene, PlacedUnit owner, PlacedUnit intruder, Rows rows) {
        GoverningCase worst = GoverningCase.of(situation -> {
            Intrusion deepest = deepest(scene, owner, intruder, situation);
            return deepest == null ? 0 : deepest.depth();
        });
        if (worst.amount() == 0) {
            return;
        }
        Intrusion deepest = deepest(scene, owner, intruder, worst.situation());
        if (deepest == null) {
            return;
        }
        PlacedZone zone = deepest.zone();
        String mend = Separation.least(scene, intruder, worst.situation(), List.of(zone.box()))
                .map(shift -> "Move " + intruder.name() + " at least " + shift.words() + ".")
                .orElse("Find another place for " + intruder.name() + " or " + owner.name() + ".");
        rows.add(rows.draft(this)
                .units(owner, intruder)
                .place(zone.box().intersection(deepest.solid()))
                .state(worst.state())
                .mend(mend)
                .atMost(
                        worst.amount() / 1e3,
                        0,
                        "mm",
                        intruder.name() + " stands " + Wording.mm(worst.amount()) + " into " + ZoneWords.of(zone)
                                + "."));
    }

    private record Intrusion(PlacedZone zone, Box solid, int depth) {}

    private static @Nullable Intrusion deepest(
            Scene scene, PlacedUnit owner, PlacedUnit intruder, Situation situation) {
        List<PlacedZone> zones = owner.zones(situation);
        Box outline = intruder.outline(situation);
        Intrusion deepest = null;
        for (int i = 0; i < zones.size(); i++) {
            PlacedZone zone = zones.get(i);
            if (zone.box().overlaps(outline) && !meantToBeThere(scene, zone, intruder, situation)) {
                for (Box solid : intruder.solids(situation)) {
                    int depth = zone.box().depth(solid);
                    if (depth > (deepest == null ? 0 : deepest.depth())) {
                        deepest = new Intrusion(zone, solid, depth);
                    }
                }
            }
        }
        return deepest;
    }

    private static boolean meantToBeThere(Scene scene, PlacedZone zone, PlacedUnit unit, Situation situation) {
        return switch (zone.purpose()) {
            case SEAT -> unit.item().kind() == ItemKind.SEAT;
            case SERVICE -> Hosting.standsOn(scene, unit, zone.owner(), situation);
            case SWING, AIR, EXIT -> false;
        };
    }
}
