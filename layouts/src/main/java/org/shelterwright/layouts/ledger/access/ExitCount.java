package org.shelterwright.layouts.ledger.access;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * Where more than one person works inside there are several exits: least over the work places of the number of exits that
 * are reached at the width of a way out, drawers out &gt;= the set number. With at most one work place, one exit is enough.
 *
 * <p>Source: the rule set of the brief. Figures: {@link Figure#EXIT_COUNT}, {@link Figure#EXIT_WIDTH}, {@link
 * Figure#EXIT_HEADROOM} (else {@link Figure#WALKWAY_HEADROOM}), {@link Figure#STEP_HEIGHT}.
 */
final class ExitCount extends NamedLimit implements Limit.OfWhole {
    ExitCount() {
        super(
                "access.exit-count",
                Subject.ACCESS,
                "Number of exits",
                Severity.HARD,
                Source.commonPractice("Two ways out where more than one person works"),
                "No unit has a work place.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> count = scene.rules().rule(Figure.EXIT_COUNT);
        Optional<Rule> width = scene.rules().rule(Figure.EXIT_WIDTH);
        Optional<Floor> found = Floor.ofWayOut(scene);
        if (count.isEmpty() || width.isEmpty() || found.isEmpty()) {
            Figure unset =
                    count.isEmpty() ? Figure.EXIT_COUNT : width.isEmpty() ? Figure.EXIT_WIDTH : Figure.WALKWAY_HEADROOM;
            rows.add(UnsetFigure.row(rows, this, unset));
            return;
        }
        Floor floor = found.get();
        List<PlacedZone> seats = floor.seats();
        if (seats.isEmpty()) {
            return;
        }
        List<WidestWays> byExit = byExit(floor);
        int needed = seats.size() > 1 ? (int) Math.round(count.get().value()) : 1;
        int least = Integer.MAX_VALUE;
        PlacedZone worst = seats.get(0);
        for (PlacedZone seat : seats) {
            int exits = count(byExit, seat, Floor.micrometres(width.get().value()));
            if (exits < least) {
                least = exits;
                worst = seat;
            }
        }
        RowDraft draft = rows.draft(this)
                .units(worst.owner())
                .place(worst.box())
                .state(Wording.situation(Situation.ON_STATION) + ", drawers out")
                .source(count.get().source());
        if (least < needed) {
            draft.mend("Free the way to another exit, or mark or add one in the body.");
        }
        rows.add(draft.countedAtLeast(
                needed,
                least,
                "exits",
                Wording.count(seats.size(), "work place") + " inside; from "
                        + worst.owner().name() + " " + Wording.count(least, "exit")
                        + (least == 1 ? " is" : " are") + " reached at the width of a way out."));
    }

    private static List<WidestWays> byExit(Floor floor) {
        List<Rect> free = EscapeFloor.of(floor);
        List<WidestWays> byExit = new ArrayList<>();
        for (WayIn exit : floor.exits()) {
            byExit.add(new WidestWays(free, List.of(exit)));
        }
        return byExit;
    }

    private static int count(List<WidestWays> byExit, PlacedZone seat, int width) {
        int count = 0;
        for (WidestWays ways : byExit) {
            count += ways.to(Rect.of(seat.box())).width() >= width ? 1 : 0;
        }
        return count;
    }
}
