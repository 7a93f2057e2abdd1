package org.shelterwright.layouts.ledger.access;

import java.util.Optional;
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
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * At each work place a person gets in and out of the seat: distance from the edge that they sit at to what faces it, over
 * the set width and the height of the seat zone &gt;= the set distance, on station. One row for each seat zone. Without
 * a set width, that of the zone counts.
 *
 * <p>Source: the rule set of the brief. Published values: NUREG-0700, 12.1.1.3-5, 36 in (915 mm) behind and 30 in (760 mm)
 * across. Figures: {@link Figure#WORK_PLACE_DEPTH}, {@link Figure#WORK_PLACE_WIDTH}.
 */
final class WorkPlaceSpace extends NamedLimit implements Limit.OfWhole {
    WorkPlaceSpace() {
        super(
                "access.work-place",
                Subject.ACCESS,
                "Room at work places",
                Severity.MEDIUM,
                Source.commonPractice("A person gets in and out of a seat"),
                "No rule set asks for it, or no unit has a work place.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> depth = scene.rules().rule(Figure.WORK_PLACE_DEPTH);
        if (depth.isEmpty()) {
            return;
        }
        for (PlacedUnit unit : scene.units()) {
            for (PlacedZone zone : unit.zones(Situation.ON_STATION)) {
                if (zone.purpose() == Purpose.SEAT) {
                    assess(scene, rows, zone, depth.get());
                }
            }
        }
    }

    private void assess(Scene scene, Rows rows, PlacedZone seat, Rule depth) {
        PlacedUnit unit = seat.owner();
        Box outline = unit.outline(Situation.ON_STATION);
        Face face = FacingSpace.sideOf(outline, seat.box());
        int edge = outline.face(face).low(face.axis());
        Box box = seat.box();
        Box front = face.axis() == Axis.X
                ? new Box(edge, box.y0(), box.z0(), edge, box.y1(), box.z1())
                : new Box(box.x0(), edge, box.z0(), box.x1(), edge, box.z1());
        int width = scene.rules()
                .rule(Figure.WORK_PLACE_WIDTH)
                .map(rule -> Floor.micrometres(rule.value()))
                .orElse(box.extent(face.axis() == Axis.X ? Axis.Y : Axis.X));
        FacingSpace space = FacingSpace.before(scene, unit, face, front, width, (other, solid) -> false);
        RowDraft draft =
                rows.draft(this, "Room at " + unit.name() + ": " + seat.name()).source(depth.source());
        rows.add(FacingRow.of(
                draft,
                unit,
                space,
                Floor.micrometres(depth.value()),
                "the edge of " + unit.name() + " at \"" + seat.name() + "\"",
                Wording.mm(width) + " wide"));
    }
}
