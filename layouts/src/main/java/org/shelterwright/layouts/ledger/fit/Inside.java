package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.GoverningCase;
import org.shelterwright.layouts.ledger.mend.Shift;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every solid lies inside the body: max over solids and faces of the length by which it reaches beyond = 0.
 *
 * <p>Source: common practice.
 */
final class Inside extends NamedLimit implements Limit.OfUnit {
    Inside() {
        super(
                "fit.inside",
                Subject.FIT,
                "Inside the body",
                Severity.HARD,
                Source.commonPractice("Equipment cannot reach through the walls"),
                "Every unit lies inside the body.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        Box inside = scene.body().inside().box();
        GoverningCase worst = GoverningCase.of(situation -> beyond(inside, unit, situation));
        if (worst.amount() == 0) {
            return;
        }
        Box outline = solidOutline(unit, worst.situation());
        Face face = worstFace(inside, outline);
        rows.add(rows.draft(this)
                .units(unit)
                .place(outline)
                .state(worst.state())
                .mend(mend(scene, unit, outline))
                .atMost(
                        worst.amount() / 1e3,
                        0,
                        "mm",
                        unit.name() + " reaches " + Wording.mm(worst.amount()) + " beyond " + Wording.surface(face)
                                + "."));
    }

    private static int beyond(Box inside, PlacedUnit unit, Situation situation) {
        if (inside.contains(unit.outline(situation))) {
            return 0;
        }
        Box outline = solidOutline(unit, situation);
        return Math.max(0, beyond(inside, outline, worstFace(inside, outline)));
    }

    private static int beyond(Box inside, Box box, Face face) {
        Axis axis = face.axis();
        return face.sign() > 0 ? box.high(axis) - inside.high(axis) : inside.low(axis) - box.low(axis);
    }

    private static Face worstFace(Box inside, Box box) {
        Face worst = Face.FRONT;
        for (Face face : Face.values()) {
            if (beyond(inside, box, face) > beyond(inside, box, worst)) {
                worst = face;
            }
        }
        return worst;
    }

    private static Box solidOutline(PlacedUnit unit, Situation situation) {
        return unit.solids(situation).stream().reduce(Box::hull).orElse(unit.outline(situation));
    }

    private static String mend(Scene scene, PlacedUnit unit, Box outline) {
        Size room = scene.body().inside();
        List<String> shifts = new ArrayList<>();
        for (Face face : Face.values()) {
            int beyond = beyond(room.box(), outline, face);
            if (outline.extent(face.axis()) > room.along(face.axis())) {
                return "It is " + Wording.mm(outline.extent(face.axis()) - room.along(face.axis()))
                        + " too long for the body as it is turned: turn " + unit.name() + " or take a larger body.";
            }
            if (beyond > 0) {
                shifts.add(new Shift(face.opposite(), beyond).words());
            }
        }
        return "Move " + unit.name() + " " + Wording.list(shifts) + ".";
    }
}
