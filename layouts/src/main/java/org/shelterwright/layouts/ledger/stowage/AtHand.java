package org.shelterwright.layouts.ledger.stowage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * What is needed at once, or soon, lies no farther from its task than a set distance, in the plan. One row for each task; the
 * farthest piece against its bound governs.
 *
 * <p>Source: KKK-A-1822E 3.11.1.1, stowage by importance, life-saving kit within reach; distances are common practice, editable.
 */
final class AtHand extends NamedLimit implements Limit.OfWhole {
    AtHand() {
        super(
                "stowage.at-hand",
                Subject.STOWAGE,
                "Pieces at hand",
                Severity.MEDIUM,
                Source.seen("KKK-A-1822E", "3.11.1.1, stowage by importance, life-saving kit within reach"),
                "The brief lists no tasks with pieces that are needed at once or soon.");
    }

    private record Far(FilledPlace place, InPlace piece, double mm, double boundMm) {}

    @Override
    public void assess(Scene scene, Rows rows) {
        Ways ways = new Ways(scene);
        for (Task task : scene.brief().listed().tasks()) {
            List<Figure> unset = new ArrayList<>();
            Far far = farthest(scene, ways, task, unset);
            if (!unset.isEmpty()) {
                rows.add(UnsetFigure.row(rows, this, unset.get(0)));
            } else if (far != null) {
                rows.add(row(rows, ways, task, far));
            }
        }
    }

    private @Nullable Far farthest(Scene scene, Ways ways, Task task, List<Figure> unset) {
        Far worst = null;
        Optional<Point> spot = ways.spot(task);
        for (FilledPlace place : FilledPlace.of(scene)) {
            for (InPlace piece : place.pieces()) {
                Figure figure = Ways.reach(piece.urgency()).orElse(null);
                if (figure != null && task.id().equals(piece.spec().task())) {
                    OptionalDouble bound = scene.rules().value(figure);
                    if (bound.isEmpty()) {
                        unset.add(figure);
                        return null;
                    }
                    double mm = spot.isPresent() ? Ways.mm(place, piece, spot.get()) : 0;
                    Far far = new Far(place, piece, mm, bound.getAsDouble());
                    if (worst == null || far.mm() * worst.boundMm() > worst.mm() * far.boundMm()) {
                        worst = far;
                    }
                }
            }
        }
        return worst;
    }

    private Row row(Rows rows, Ways ways, Task task, Far far) {
        RowDraft draft = rows.draft(this, title() + ", " + task.name())
                .units(far.place().unit())
                .place(far.place().placed(far.piece().box(), Situation.ON_STATION))
                .state(Wording.situation(Situation.ON_STATION));
        if (ways.spot(task).isEmpty()) {
            return draft.mend("Give the task a unit that is placed, or an opening of the body.")
                    .notAssessed("Where the task " + task.name() + " is done is not stated or not placed.");
        }
        return draft.mend("Put it into a place nearer to where it is used.")
                .atMost(
                        far.mm(),
                        far.boundMm(),
                        "mm",
                        far.piece().name() + " in the " + far.place().name() + " lies " + Amounts.number(far.mm(), 0)
                                + " mm from where " + task.name() + " needs it "
                                + (far.piece().urgency() == Urgency.AT_ONCE ? "at once" : "soon") + "; at most "
                                + Amounts.number(far.boundMm(), 0) + " mm.");
    }
}
