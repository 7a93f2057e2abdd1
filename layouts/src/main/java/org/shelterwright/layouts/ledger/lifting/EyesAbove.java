package org.shelterwright.layouts.ledger.lifting;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;

/**
 * The lifting eyes lie above the centre of mass, so that the body cannot turn over on its sling. (MIL-STD-209K allows lower ones
 * outside a cone about the centre of mass; that is not judged here.)
 */
final class EyesAbove extends LiftLimit {
    EyesAbove() {
        super(
                "lifting.eyes-above",
                "Lifting eyes above the centre of mass",
                Source.seen("MIL-STD-209K", "lift points above the centre of mass"));
    }

    @Override
    Row row(RowDraft draft, Scene scene, LiftPlan plan) {
        double eyes = Lengths.metres(plan.legs().get(0).eye().at().z());
        if (eyes < plan.highZ()) {
            draft.mend("Bring mass lower by at least " + Amounts.mm(plan.highZ() - eyes) + ", or lift it by a frame.");
        }
        return draft.atLeast(
                1000 * plan.highZ(),
                1000 * eyes,
                "mm",
                "The centre of mass lies up to " + Amounts.mm(plan.highZ()) + " above the floor, and the lifting eyes "
                        + Amounts.mm(eyes) + ".");
    }
}
