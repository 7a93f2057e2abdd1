package org.shelterwright.layouts.ledger.access;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * From a door, a person comes to every work place and every service zone that reaches down to the floor: the widest
 * square that can be slid there without turning &gt;= the width of walkways, on station. Exact by {@link WidestWays}. One
 * row for each zone, and one for the height of the body.
 *
 * <p>A square of width w holds the disc of diameter w, so a way for it is one for the disc; only diagonal gaps between two
 * corners are judged narrower than a disc would find them.
 *
 * <p>Source: the rule set of the brief. Figures: {@link Figure#WALKWAY_WIDTH}, {@link Figure#WALKWAY_HEADROOM}, {@link
 * Figure#STEP_HEIGHT}.
 */
final class Walkways extends NamedLimit implements Limit.OfWhole {
    Walkways() {
        super(
                "access.walkway",
                Subject.ACCESS,
                "Walkways",
                Severity.MEDIUM,
                Source.commonPractice("Every work place and service side can be walked to"),
                "No unit has a work place or service zone on the floor.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> width = scene.rules().rule(Figure.WALKWAY_WIDTH);
        Optional<Floor> floor = Floor.of(scene);
        if (width.isEmpty() || floor.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, width.isEmpty() ? Figure.WALKWAY_WIDTH : Figure.WALKWAY_HEADROOM));
            return;
        }
        rows.add(headroom(rows, scene, floor.get()));
        List<PlacedZone> targets = floor.get().targets();
        List<WayIn> doors = floor.get().doors();
        WidestWays ways =
                new WidestWays(FreeFloor.of(floor.get().room(), floor.get().obstacles()), doors);
        for (PlacedZone target : targets) {
            rows.add(row(rows, floor.get(), width.get(), target, ways.to(Rect.of(target.box())), doors.isEmpty()));
        }
    }

    private Row headroom(Rows rows, Scene scene, Floor floor) {
        int there = scene.body().inside().z();
        RowDraft draft = rows.draft(this, "Headroom of the body");
        scene.rules().rule(Figure.WALKWAY_HEADROOM).ifPresent(rule -> draft.source(rule.source()));
        if (there < floor.headroom()) {
            draft.mend("Use a higher body, or set a lower " + Figure.WALKWAY_HEADROOM.id() + " in the brief.");
        }
        return draft.atLeast(
                floor.headroom() / 1e3, there / 1e3, "mm", "The body is " + Wording.mm(there) + " high inside.");
    }

    private Row row(Rows rows, Floor floor, Rule width, PlacedZone target, WidestWays.Way way, boolean noDoor) {
        RowDraft draft = rows.draft(this, "Way to " + target.owner().name() + ": " + target.name())
                .units(target.owner())
                .state(Wording.situation(Situation.ON_STATION))
                .source(width.source());
        int needed = Floor.micrometres(width.value());
        String finding = "The way to " + ZoneWords.of(target) + " is " + Wording.mm(way.width()) + " wide.";
        draft.place(way.narrowest().at(0, floor.headroom()));
        if (noDoor) {
            finding = "The body has no door, so there is no way to " + ZoneWords.of(target) + ".";
            draft.mend("Give the body a door.");
        } else if (way.width() == 0) {
            finding = "There is no way from a door to " + ZoneWords.of(target) + ".";
            draft.place(target.box()).mend("Free a way of " + Wording.mm(needed) + " to it.");
        } else if (way.width() < needed) {
            Neighbours neighbours = Neighbours.of(floor, way.narrowest());
            finding = "The way to " + ZoneWords.of(target) + " narrows to " + Wording.mm(way.width())
                    + neighbours.words() + ".";
            draft.place(neighbours.place().at(0, floor.headroom()))
                    .mend(mend(target, neighbours, needed - way.width()));
        }
        return draft.atLeast(needed / 1e3, way.width() / 1e3, "mm", finding);
    }

    /** What is reached stays: of what narrows the way, another is moved, if there is one. */
    private static String mend(PlacedZone target, Neighbours neighbours, int lacking) {
        String amount = " at least " + Wording.mm(lacking);
        if (neighbours.units().isEmpty()) {
            return "Widen it by" + amount + ".";
        }
        PlacedUnit moved = neighbours.units().stream()
                .filter(unit -> !unit.id().equals(target.owner().id()))
                .findFirst()
                .orElse(neighbours.units().get(0));
        return "Move " + moved.name() + amount + " out of the way.";
    }
}
