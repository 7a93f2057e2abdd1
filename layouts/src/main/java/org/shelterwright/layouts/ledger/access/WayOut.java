package org.shelterwright.layouts.ledger.access;

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
 * From every work place there is a way out: the widest square that can be slid to an exit with every drawer, slide-out and
 * flap out &gt;= the width of a way out, on station. One row for each seat zone; the widest of its exits counts.
 *
 * <p>Source: the rule set of the brief. Published value for buildings: 29 CFR 1910.36(g)(2), 28 in (711 mm). Figures:
 * {@link Figure#EXIT_WIDTH}, {@link Figure#EXIT_HEADROOM} (else {@link Figure#WALKWAY_HEADROOM}), {@link
 * Figure#STEP_HEIGHT}.
 */
final class WayOut extends NamedLimit implements Limit.OfWhole {
    WayOut() {
        super(
                "access.way-out",
                Subject.ACCESS,
                "Way out",
                Severity.HARD,
                Source.commonPractice("Everyone gets out whatever stands open"),
                "No unit has a work place.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> width = scene.rules().rule(Figure.EXIT_WIDTH);
        Optional<Floor> found = Floor.ofWayOut(scene);
        if (width.isEmpty() || found.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, width.isEmpty() ? Figure.EXIT_WIDTH : Figure.WALKWAY_HEADROOM));
            return;
        }
        Floor floor = found.get();
        List<PlacedZone> seats = floor.seats();
        if (seats.isEmpty()) {
            return;
        }
        List<Rect> free = EscapeFloor.of(floor);
        WidestWays ways = new WidestWays(free, floor.exits());
        int needed = Floor.micrometres(width.get().value());
        for (PlacedZone seat : seats) {
            WidestWays.Way way = ways.to(Rect.of(seat.box()));
            RowDraft draft = rows.draft(this, "Way out from " + seat.owner().name() + ": " + seat.name())
                    .units(seat.owner())
                    .place(way.narrowest().at(0, floor.headroom()))
                    .state(Wording.situation(Situation.ON_STATION) + ", drawers out")
                    .source(width.get().source());
            rows.add(draft.atLeast(needed / 1e3, way.width() / 1e3, "mm", finding(floor, seat, way, needed, draft)));
        }
    }

    private static String finding(Floor floor, PlacedZone seat, WidestWays.Way way, int needed, RowDraft draft) {
        String from = "from " + ZoneWords.of(seat);
        if (floor.exits().isEmpty()) {
            draft.mend("Mark which openings of the body are exits.");
            return "The body has no exit, so there is no way out " + from + ".";
        }
        if (way.width() >= needed) {
            return "The way out " + from + " is " + Wording.mm(way.width()) + " wide.";
        }
        if (way.width() == 0) {
            draft.mend("Free a way of " + Wording.mm(needed) + " to an exit.");
            return "There is no way out " + from + " with the drawers out.";
        }
        Neighbours neighbours = Neighbours.of(floor, way.narrowest());
        draft.place(neighbours.place().at(0, floor.headroom()))
                .mend("Widen it there by at least " + Wording.mm(needed - way.width()) + ".");
        return "The way out " + from + " narrows to " + Wording.mm(way.width()) + " with the drawers out"
                + neighbours.words() + ".";
    }
}
