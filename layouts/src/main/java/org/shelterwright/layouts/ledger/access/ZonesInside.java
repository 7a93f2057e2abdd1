package org.shelterwright.layouts.ledger.access;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.GoverningCase;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * The clear zones of a unit lie inside the body and out of its own parts: max over zones of the length beyond a wall, and
 * of the depth in an intrusion = 0. A zone may reach out through a door or hatch that is at least as wide and begins no
 * higher: it is used with that open.
 *
 * <p>Source: the clear zones of the items in the catalog.
 */
final class ZonesInside extends NamedLimit implements Limit.OfUnit {
    ZonesInside() {
        super(
                "access.zone-inside",
                Subject.ACCESS,
                "Clear zones inside the body",
                Severity.MEDIUM,
                Source.stated("Catalog", "clear zones and movable parts of the items"),
                "Every clear zone lies inside the body.");
    }

    private record Loss(PlacedZone zone, String to, int length) {}

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        GoverningCase worst = GoverningCase.of(situation -> {
            Loss loss = worst(scene, unit, situation);
            return loss == null ? 0 : loss.length();
        });
        Loss loss = worst.amount() == 0 ? null : worst(scene, unit, worst.situation());
        if (loss != null) {
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(loss.zone().box())
                    .state(worst.state())
                    .mend("Move " + unit.name() + " away from it by at least " + Wording.mm(loss.length())
                            + ", or turn it.")
                    .atMost(
                            loss.length() / 1e3,
                            0,
                            "mm",
                            capitalised(ZoneWords.of(loss.zone())) + " reaches " + Wording.mm(loss.length()) + " "
                                    + loss.to() + "."));
        }
    }

    private static @Nullable Loss worst(Scene scene, PlacedUnit unit, Situation situation) {
        Box inside = scene.body().inside().box();
        Loss worst = null;
        for (PlacedZone zone : unit.zones(situation)) {
            Box box = zone.box();
            for (Face face : Face.values()) {
                int beyond = beyond(inside, box, face);
                if (beyond > length(worst) && !throughOpening(scene, face, box)) {
                    worst = new Loss(zone, "beyond " + Wording.surface(face), beyond);
                }
            }
            for (Intrusion intrusion : scene.body().intrusions()) {
                int depth = box.depth(intrusion.box());
                if (depth > length(worst)) {
                    worst = new Loss(zone, "into " + intrusion.name(), depth);
                }
            }
        }
        return worst;
    }

    private static int beyond(Box inside, Box box, Face face) {
        Axis axis = face.axis();
        return face.sign() > 0 ? box.high(axis) - inside.high(axis) : inside.low(axis) - box.low(axis);
    }

    private static boolean throughOpening(Scene scene, Face wall, Box zone) {
        return wall.upright() && scene.body().openings().stream().anyMatch(opening -> passes(opening, wall, zone));
    }

    private static boolean passes(Opening opening, Face wall, Box zone) {
        Box area = opening.area();
        Axis along = wall.axis() == Axis.X ? Axis.Y : Axis.X;
        return opening.wall() == wall
                && opening.kind() != Opening.Kind.WINDOW
                && area.low(along) <= zone.low(along)
                && zone.high(along) <= area.high(along)
                && area.z0() <= zone.z0()
                && zone.z0() < area.z1();
    }

    private static int length(@Nullable Loss loss) {
        return loss == null ? 0 : loss.length();
    }

    private static String capitalised(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
