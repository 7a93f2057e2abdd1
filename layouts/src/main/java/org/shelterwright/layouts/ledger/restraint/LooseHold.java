package org.shelterwright.layouts.ledger.restraint;

import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.fit.CarriedMass;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * What holds a loose unit on the road bears its push: {@code m g √(aₓ² + a_y² + max(0, a_z)²) ≤ F}, in every direction of every
 * load case. Friction and neighbours carry nothing.
 *
 * <p>Source: the hold that the item states.
 */
final class LooseHold extends NamedLimit implements Limit.OfUnit {
    private static final double STANDARD_GRAVITY = 9.80665;

    LooseHold() {
        super(
                "restraint.loose",
                Subject.RESTRAINT,
                "Hold of loose units on the road",
                Severity.HARD,
                Source.stated("Catalog", "hold on the road of the item"),
                "What holds each loose unit on the road bears it.");
    }

    /** Every direction of every load case, kept with the scene. */
    private record Pushes(List<Push> list) {}

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        if (!unit.item().mounting().loose()) {
            return;
        }
        RowDraft draft = rows.draft(this, "Hold of " + unit.name() + " on the road")
                .units(unit)
                .place(unit.outline(Situation.ON_THE_ROAD));
        List<Push> pushes = scene.derived(
                        Pushes.class, one -> new Pushes(Push.of(one.rules().loadCases())))
                .list();
        Double holdN = unit.item().mounting().roadHoldN();
        if (pushes.isEmpty()) {
            rows.add(NoLoadCase.row(rows, this));
        } else if (holdN == null || unit.mass(Situation.ON_THE_ROAD).massKg() == null) {
            String what = holdN == null ? "What holds " : "The mass of ";
            rows.add(draft.mend("State " + (holdN == null ? "roadHoldN in the mounting" : "the mass") + " of item "
                            + unit.item().id() + ".")
                    .notAssessed(what + unit.name() + (holdN == null ? " on the road" : "") + " is not stated."));
        } else {
            assess(scene, unit, holdN, pushes, draft, rows);
        }
    }

    /** The push that a unit presses hardest under, and the force (N). */
    record Worst(Push push, double forceN) {}

    static Worst worst(Scene scene, PlacedUnit unit, List<Push> pushes) {
        double weightN = STANDARD_GRAVITY
                * (CarriedMass.worstEmptyKg(new MassModel(scene.rules()), unit, Situation.ON_THE_ROAD)
                        + unit.item().tanks().stream().mapToDouble(Tank::fullKg).sum());
        Push worst = pushes.get(0);
        double mostN = -1;
        for (Push push : pushes) {
            double up = Math.max(0, push.gz());
            double force = weightN * Math.sqrt(push.gx() * push.gx() + push.gy() * push.gy() + up * up);
            if (force > mostN * (1 + 1e-9)) {
                mostN = force;
                worst = push;
            }
        }
        return new Worst(worst, mostN);
    }

    private static void assess(
            Scene scene, PlacedUnit unit, double holdN, List<Push> pushes, RowDraft draft, Rows rows) {
        Worst found = worst(scene, unit, pushes);
        Push worst = found.push();
        double mostN = found.forceN();
        if (mostN > holdN) {
            rows.add(draft.state(worst.text())
                    .mend("Hold " + unit.name() + " by straps or latches that bear at least " + Holding.newtons(mostN)
                            + ", or stow it elsewhere.")
                    .atMost(
                            mostN,
                            holdN,
                            "N",
                            unit.name() + " pushes with " + Holding.newtons(mostN) + " under " + worst.text()
                                    + ", and what holds it " + Wording.situation(Situation.ON_THE_ROAD) + " bears "
                                    + Holding.newtons(holdN) + "."));
        }
    }
}
