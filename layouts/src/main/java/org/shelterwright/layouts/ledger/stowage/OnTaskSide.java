package org.shelterwright.layouts.ledger.stowage;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * The pieces of a task ride on the side of the body that the task asks for. Demand: number of pieces on the other side, of 0.
 *
 * <p>Source: the brief; common practice, left and right side by job.
 */
final class OnTaskSide extends NamedLimit implements Limit.OfWhole {
    OnTaskSide() {
        super(
                "stowage.side",
                Subject.STOWAGE,
                "Side of the body by task",
                Severity.MEDIUM,
                Source.stated("Brief", "side of the task"),
                "No task asks for a side of the body.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        int middle = scene.body().inside().y() / 2;
        for (Task task : scene.brief().listed().tasks()) {
            Face side = task.side();
            if (side == null) {
                continue;
            }
            List<String> off = new ArrayList<>();
            List<String> units = new ArrayList<>();
            for (FilledPlace place : FilledPlace.of(scene)) {
                for (InPlace piece : place.pieces()) {
                    if (task.id().equals(piece.spec().task())) {
                        int y = place.placed(piece.box(), Situation.ON_STATION).centre().y();
                        if (side == Face.LEFT ? y < middle : y > middle) {
                            off.add(piece.name());
                            units.add(place.unit().id());
                        }
                    }
                }
            }
            RowDraft draft = rows.draft(this, title() + ", " + task.name())
                    .state(Wording.situation(Situation.ON_STATION));
            String word = side == Face.LEFT ? "left" : "right";
            rows.add(
                    off.isEmpty()
                            ? draft.held("The pieces of " + task.name() + " ride on the " + word + ".")
                            : draft.units(units.stream().distinct().toList())
                                    .mend("Put them into units on the " + word + ".")
                                    .atMost(
                                            off.size(),
                                            0,
                                            "pieces",
                                            Wording.list(off) + " of " + task.name() + (off.size() == 1 ? " rides" : " ride")
                                                    + " on the other side than the " + word + "."));
        }
    }
}
