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
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * An aisle that must be wider above a set height than below it: the widest square from a door to each work place and service
 * zone, past what reaches into the height below &gt;= one width, and past what reaches into the height above &gt;= the
 * other, on station. The narrower of the zones governs; one row for each height.
 *
 * <p>Source: the rule set of the brief. Published values: 14 CFR 25.815 (for passenger aisles of aircraft). Figures: {@link
 * Figure#AISLE_SPLIT}, {@link Figure#AISLE_BELOW}, {@link Figure#AISLE_ABOVE}, {@link Figure#WALKWAY_HEADROOM}.
 */
final class SplitAisle extends NamedLimit implements Limit.OfWhole {
    SplitAisle() {
        super(
                "access.split-aisle",
                Subject.ACCESS,
                "Aisle of two widths",
                Severity.MEDIUM,
                Source.seen("14 CFR 25.815", "width of aisle"),
                "No rule set asks for it, or no unit has a work place or service zone on the floor.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> split = scene.rules().rule(Figure.AISLE_SPLIT);
        if (split.isEmpty()) {
            return;
        }
        Optional<Floor> floor = Floor.of(scene);
        if (floor.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.WALKWAY_HEADROOM));
            return;
        }
        int height = Floor.micrometres(split.get().value());
        Floor one = floor.get();
        add(rows, one, new Floor(scene, height, one.step()), Figure.AISLE_BELOW, "below " + Wording.mm(height));
        add(rows, one, new Floor(scene, one.headroom(), height), Figure.AISLE_ABOVE, "above " + Wording.mm(height));
    }

    private void add(Rows rows, Floor whole, Floor layer, Figure figure, String where) {
        List<PlacedZone> targets = whole.targets();
        if (targets.isEmpty()) {
            return;
        }
        Optional<Rule> rule = whole.scene().rules().rule(figure);
        if (rule.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, figure));
            return;
        }
        WidestWays ways = new WidestWays(FreeFloor.of(layer.room(), layer.obstacles()), layer.doors());
        PlacedZone worst = targets.get(0);
        WidestWays.Way least = ways.to(Rect.of(worst.box()));
        for (PlacedZone target : targets) {
            WidestWays.Way way = ways.to(Rect.of(target.box()));
            if (way.width() < least.width()) {
                least = way;
                worst = target;
            }
        }
        rows.add(row(rows.draft(this, "Aisle " + where), layer, rule.get(), worst, least, where));
    }

    private static Row row(
            RowDraft draft, Floor layer, Rule rule, PlacedZone target, WidestWays.Way way, String where) {
        int needed = Floor.micrometres(rule.value());
        draft.units(target.owner())
                .state(Wording.situation(Situation.ON_STATION))
                .source(rule.source())
                .place(way.narrowest().at(0, layer.headroom()));
        String finding =
                "The way to " + ZoneWords.of(target) + " is " + Wording.mm(way.width()) + " wide " + where + ".";
        if (way.width() == 0) {
            finding = "There is no way from a door to " + ZoneWords.of(target) + " " + where + ".";
            draft.mend("Free a way of " + Wording.mm(needed) + " to it.");
        } else if (way.width() < needed) {
            Neighbours neighbours = Neighbours.of(layer, way.narrowest());
            finding = "The way to " + ZoneWords.of(target) + " narrows to " + Wording.mm(way.width()) + " " + where
                    + neighbours.words() + ".";
            draft.mend("Widen it there by at least " + Wording.mm(needed - way.width()) + ".");
        }
        return draft.atLeast(needed / 1e3, way.width() / 1e3, "mm", finding);
    }
}
