package org.shelterwright.layouts.ledger.access;

import java.util.Optional;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * Before each served side of a rack there is room to work: distance to what faces it, over its width and height &gt;= the
 * set distance, on station. One row for each service zone of a rack.
 *
 * <p>Source: the rule set of the brief. Published value: MIL-STD-1472, 1.07 m (42 in), from memory. Figure: {@link
 * Figure#RACK_FRONT}.
 */
final class RackFront extends NamedLimit implements Limit.OfWhole {
    RackFront() {
        super(
                "access.rack-front",
                Subject.ACCESS,
                "Room before racks",
                Severity.MEDIUM,
                Source.commonPractice("People can kneel and lift before a rack"),
                "No rule set asks for it, or no rack has a service zone.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> rule = scene.rules().rule(Figure.RACK_FRONT);
        if (rule.isEmpty()) {
            return;
        }
        for (PlacedUnit unit : scene.units()) {
            if (unit.item().kind() == ItemKind.RACK) {
                for (PlacedZone zone : unit.zones(Situation.ON_STATION)) {
                    if (zone.purpose() == Purpose.SERVICE) {
                        assess(scene, rows, zone, rule.get());
                    }
                }
            }
        }
    }

    private void assess(Scene scene, Rows rows, PlacedZone zone, Rule rule) {
        PlacedUnit unit = zone.owner();
        Box outline = unit.outline(Situation.ON_STATION);
        Face face = FacingSpace.sideOf(outline, zone.box());
        int width = outline.extent(face.axis() == Axis.X ? Axis.Y : Axis.X);
        FacingSpace space = FacingSpace.before(scene, unit, face, outline.face(face), width, (other, solid) -> false);
        RowDraft draft = rows.draft(this, "Room before " + unit.name() + ": " + zone.name())
                .source(rule.source());
        rows.add(FacingRow.of(draft, unit, space, Floor.micrometres(rule.value()), unit.name(), ""));
    }
}
