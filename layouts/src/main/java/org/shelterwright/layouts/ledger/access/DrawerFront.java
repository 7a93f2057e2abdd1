package org.shelterwright.layouts.ledger.access;

import java.util.Optional;
import org.shelterwright.catalog.item.MovablePart;
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
import org.shelterwright.layouts.scene.Scene;

/**
 * Before each drawer and slide-out that is out there is room for a person: distance from its end to what faces it, over its
 * width and height &gt;= the set distance, on station. One row for each drawer and slide-out.
 *
 * <p>Source: the rule set of the brief. Published value: MIL-STD-1472, deepest drawer and 200 mm (8 in), from memory. Figure:
 * {@link Figure#DRAWER_FRONT}.
 */
final class DrawerFront extends NamedLimit implements Limit.OfWhole {
    DrawerFront() {
        super(
                "access.drawer-front",
                Subject.ACCESS,
                "Room before drawers",
                Severity.MEDIUM,
                Source.commonPractice("A person stands before a drawer that is out"),
                "No rule set asks for it, or no item has a drawer or slide-out.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> rule = scene.rules().rule(Figure.DRAWER_FRONT);
        if (rule.isEmpty()) {
            return;
        }
        for (PlacedUnit unit : scene.units()) {
            for (MovablePart part : unit.item().movableParts()) {
                if (part.kind() == MovablePart.Kind.DRAWER || part.kind() == MovablePart.Kind.SLIDE_OUT) {
                    assess(scene, rows, unit, part, rule.get());
                }
            }
        }
    }

    private void assess(Scene scene, Rows rows, PlacedUnit unit, MovablePart part, Rule rule) {
        Box sweep =
                unit.pose(Situation.ON_STATION).apply(part.sweep(), unit.item().size());
        Face face = FacingSpace.sideOf(unit.outline(Situation.ON_STATION), sweep);
        int width = sweep.extent(face.axis() == Axis.X ? Axis.Y : Axis.X);
        FacingSpace space = FacingSpace.before(scene, unit, face, sweep.face(face), width, (other, solid) -> false);
        RowDraft draft = rows.draft(this, "Room before " + part.name() + " of " + unit.name())
                .source(rule.source());
        String before = "\"" + part.name() + "\" of " + unit.name() + ", when out,";
        rows.add(FacingRow.of(draft, unit, space, Floor.micrometres(rule.value()), before, ""));
    }
}
