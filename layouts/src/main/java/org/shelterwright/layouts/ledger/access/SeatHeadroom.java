package org.shelterwright.layouts.ledger.access;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * Over the seat zone of every work place the height stays free that a seated person needs: least height above the floor
 * of a solid over it, or of the roof &gt;= the set height, on station. The owner's own solids and seats do not
 * count. One row for each seat zone.
 *
 * <p>Source: the rule set of the brief. Figure: {@link Figure#SEAT_HEADROOM}.
 */
final class SeatHeadroom extends NamedLimit implements Limit.OfWhole {
    SeatHeadroom() {
        super(
                "access.seat-headroom",
                Subject.ACCESS,
                "Headroom at work places",
                Severity.MEDIUM,
                Source.commonPractice("A seated person does not knock their head"),
                "No unit has a work place.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        List<PlacedZone> seats = scene.units().stream()
                .flatMap(unit -> unit.zones(Situation.ON_STATION).stream())
                .filter(zone -> zone.purpose() == Purpose.SEAT)
                .toList();
        Optional<Rule> rule = scene.rules().rule(Figure.SEAT_HEADROOM);
        if (seats.isEmpty()) {
            return;
        }
        if (rule.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.SEAT_HEADROOM));
        } else {
            seats.forEach(seat -> assess(scene, rows, seat, rule.get()));
        }
    }

    private record Ceiling(int z, String name, @Nullable PlacedUnit unit) {}

    private void assess(Scene scene, Rows rows, PlacedZone seat, Rule rule) {
        Ceiling ceiling = ceiling(scene, seat);
        int there = Math.max(0, ceiling.z());
        int needed = Floor.micrometres(rule.value());
        RowDraft draft = rows.draft(this, "Headroom at " + seat.owner().name() + ": " + seat.name())
                .units(seat.owner())
                .place(seat.box())
                .state(Wording.situation(Situation.ON_STATION))
                .source(rule.source());
        if (ceiling.unit() != null) {
            draft.units(ceiling.unit());
        }
        if (there < needed) {
            draft.mend(
                    ceiling.unit() == null
                            ? "Find another place for " + seat.owner().name() + "."
                            : "Move " + ceiling.name() + " at least " + Wording.mm(needed - there)
                                    + " up, or away from there.");
        }
        rows.add(draft.atLeast(
                needed / 1e3,
                there / 1e3,
                "mm",
                "At " + ZoneWords.of(seat) + " " + Wording.mm(there) + " above the floor are free, up to "
                        + ceiling.name() + "."));
    }

    private static Ceiling ceiling(Scene scene, PlacedZone seat) {
        Ceiling lowest = new Ceiling(scene.body().inside().z(), "the roof", null);
        for (Intrusion intrusion : scene.body().intrusions()) {
            if (over(intrusion.box(), seat.box()) && intrusion.box().z0() < lowest.z()) {
                lowest = new Ceiling(intrusion.box().z0(), intrusion.name(), null);
            }
        }
        for (PlacedUnit unit : scene.units()) {
            if (unit != seat.owner() && unit.item().kind() != ItemKind.SEAT) {
                for (Box solid : unit.solids(Situation.ON_STATION)) {
                    if (over(solid, seat.box()) && solid.z0() < lowest.z()) {
                        lowest = new Ceiling(solid.z0(), unit.name(), unit);
                    }
                }
            }
        }
        return lowest;
    }

    private static boolean over(Box solid, Box seat) {
        return Rect.of(solid).overlaps(Rect.of(seat)) && solid.z1() > seat.z0();
    }
}
