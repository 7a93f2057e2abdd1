package org.shelterwright.layouts.ledger.stowage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shelterwright.catalog.item.Situation;
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
 * Of the pieces of a task, what is used first lies nearest: none lies farther from the task than one that is used later by more
 * than a slack. One row for each task; the worst pair governs.
 *
 * <p>Source: common practice, items used first are nearest; the slack is editable.
 */
final class FirstUsedNearest extends NamedLimit implements Limit.OfWhole {
    FirstUsedNearest() {
        super(
                "stowage.first-used",
                Subject.STOWAGE,
                "First used, nearest",
                Severity.MEDIUM,
                Source.commonPractice("Stowage by task: items used first are nearest"),
                "The brief orders no pieces within a task.");
    }

    private record Used(FilledPlace place, InPlace piece, int order, double mm) {}

    @Override
    public void assess(Scene scene, Rows rows) {
        Ways ways = new Ways(scene);
        OptionalDouble slack = scene.rules().value(Figure.STOWAGE_ORDER_SLACK);
        for (Task task : scene.brief().listed().tasks()) {
            List<Used> used = used(scene, ways, task);
            if (used.size() >= 2) {
                rows.add(
                        slack.isEmpty()
                                ? UnsetFigure.row(rows, this, Figure.STOWAGE_ORDER_SLACK)
                                : row(rows, task, used, slack.getAsDouble()));
            }
        }
    }

    /** The ordered pieces of a task; none if it is not known where it is done. */
    private static List<Used> used(Scene scene, Ways ways, Task task) {
        List<Used> used = new ArrayList<>();
        Optional<Point> spot = ways.spot(task);
        if (spot.isEmpty()) {
            return used;
        }
        for (FilledPlace place : FilledPlace.of(scene)) {
            for (InPlace piece : place.pieces()) {
                Integer order = piece.spec().order();
                if (order != null && task.id().equals(piece.spec().task())) {
                    used.add(new Used(place, piece, order, Ways.mm(place, piece, spot.get())));
                }
            }
        }
        return used;
    }

    private Row row(Rows rows, Task task, List<Used> used, double slack) {
        Used first = used.get(0);
        Used later = used.get(0);
        double most = 0;
        for (Used a : used) {
            for (Used b : used) {
                if (a.order() < b.order() && a.mm() - b.mm() > most) {
                    most = a.mm() - b.mm();
                    first = a;
                    later = b;
                }
            }
        }
        RowDraft draft = rows.draft(this, title() + ", " + task.name()).state(Wording.situation(Situation.ON_STATION));
        if (most == 0) {
            return draft.held("Nothing of " + task.name() + " lies farther than what is used after it.");
        }
        return draft.units(first.place().unit())
                .place(first.place().placed(first.piece().box(), Situation.ON_STATION))
                .mend("Change the places of the two.")
                .atMost(
                        most,
                        slack,
                        "mm",
                        first.piece().name() + " in the " + first.place().name() + " is used before "
                                + later.piece().name() + " in the " + later.place().name() + ", and lies "
                                + Amounts.number(most, 0) + " mm farther from " + task.name() + "; at most "
                                + Amounts.number(slack, 0) + " mm.");
    }
}
