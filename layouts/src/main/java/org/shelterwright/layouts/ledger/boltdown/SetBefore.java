package org.shelterwright.layouts.ledger.boltdown;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.layout.BoltDownOrder.Before;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** What a person has set to be in before something else is. */
final class SetBefore extends NamedLimit implements Limit.OfWhole {
    SetBefore() {
        super(
                "boltdown.before",
                Subject.BOLT_DOWN,
                "In before others, as set",
                Severity.MEDIUM,
                Source.stated("layout", "bolt-down order"),
                "Nothing is set to be in before something else.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Sequence> sequence = Sequence.of(scene);
        if (sequence.isEmpty() || sequence.get().order().before().isEmpty()) {
            return;
        }
        List<String> order = sequence.get().order().units();
        int held = 0;
        int count = 0;
        for (Before one : sequence.get().order().before()) {
            int first = order.indexOf(one.first());
            int then = order.indexOf(one.then());
            if (first < 0 || then < 0) {
                continue;
            }
            count++;
            if (first < then) {
                held++;
                continue;
            }
            String reason = one.reason();
            rows.add(rows.draft(this)
                    .units(List.of(one.first(), one.then()))
                    .state("while bolting down")
                    .mend("Change the order, or take the wish away.")
                    .atMost(
                            1,
                            0,
                            "step",
                            name(scene, one.first()) + " is set to be in before " + name(scene, one.then())
                                    + (reason == null ? "" : " (" + reason + ")") + ", but comes after it."));
        }
        if (count > 0 && held == count) {
            rows.add(rows.draft(this)
                    .state("while bolting down")
                    .countedAtLeast(count, count, "", "As set: " + Wording.count(count, "pair") + " in order."));
        }
    }

    private static String name(Scene scene, String id) {
        return scene.unit(id).map(PlacedUnit::name).orElse(id);
    }
}
