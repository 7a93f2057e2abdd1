package org.shelterwright.layouts.ledger.fit;

import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.layout.Place;
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
 * A unit on the floor, a wall or the roof touches it: |place of its mounting face - place of the surface| = 0. Units on
 * or under others: {@link RestsOnSupport}.
 *
 * <p>Source: common practice.
 */
final class TouchesSurface extends NamedLimit implements Limit.OfUnit {
    TouchesSurface() {
        super(
                "fit.contact",
                Subject.FIT,
                "Contact with the surface",
                Severity.HARD,
                Source.commonPractice("A unit touches what it is mounted on"),
                "Every unit touches the surface that it is mounted on.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        Box inside = scene.body().inside().box();
        GoverningCase worst = GoverningCase.of(situation -> Math.abs(gap(inside, unit, situation)));
        if (worst.amount() > 0) {
            Face face = MountFace.of(unit.place(worst.situation()));
            boolean off = gap(inside, unit, worst.situation()) > 0;
            Shift shift = new Shift(off ? face : face.opposite(), worst.amount());
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(unit.outline(worst.situation()))
                    .state(worst.state())
                    .mend("Move " + unit.name() + " " + shift.words() + ".")
                    .atMost(
                            worst.amount() / 1e3,
                            0,
                            "mm",
                            unit.name() + " is mounted on " + Wording.surface(face) + " but lies "
                                    + Wording.mm(worst.amount()) + (off ? " off it." : " beyond it.")));
        }
    }

    /** Free distance between mounting face and surface (µm); below zero if the face lies beyond. */
    private static int gap(Box inside, PlacedUnit unit, Situation situation) {
        Place place = unit.place(situation);
        if (place.host() != null) {
            return 0;
        }
        Face face = MountFace.of(place);
        Box outline = unit.outline(situation);
        return face.sign() > 0
                ? inside.high(face.axis()) - outline.high(face.axis())
                : outline.low(face.axis()) - inside.low(face.axis());
    }
}
