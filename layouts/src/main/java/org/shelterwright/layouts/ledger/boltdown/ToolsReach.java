package org.shelterwright.layouts.ledger.boltdown;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.ToolReach;

/** Hand and tool get to each fixing at its time in the order of the layout: see {@link ToolReach}. */
final class ToolsReach extends NamedLimit implements Limit.AtRest {
    ToolsReach() {
        super(
                "boltdown.tools",
                Subject.BOLT_DOWN,
                "Tools reach the fixings",
                Severity.MEDIUM,
                Source.commonPractice("Room for hand and tool at each fixing when it is tightened"),
                "There is no order in which anything is bolted.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Sequence> sequence = Sequence.of(scene);
        if (sequence.isEmpty()) {
            return;
        }
        Optional<ToolReach> reach = ToolReach.of(scene);
        if (reach.isEmpty()) {
            Figure missing = ToolReach.figures().stream()
                    .filter(figure -> scene.rules().rule(figure).isEmpty())
                    .findFirst()
                    .orElseThrow();
            rows.add(UnsetFigure.row(rows, this, missing));
            return;
        }
        BitSet gone = sequence.get().goneAt(0, scene.units().size());
        int all = 0;
        int reached = 0;
        for (PlacedUnit unit : sequence.get().units()) {
            List<ToolReach.Access> hidden = reach.get().hidden(unit, gone);
            int count = reach.get().accesses(unit).size();
            all += count;
            reached += count - hidden.size();
            if (!hidden.isEmpty()) {
                hidden(scene, reach.get(), unit, gone, hidden, count, rows);
            }
            gone.clear(unit.index());
        }
        if (all > 0 && reached == all) {
            rows.add(rows.draft(this)
                    .source(scene.rules().rule(Figure.TOOL_REACH).orElseThrow().source())
                    .state("while bolting down")
                    .countedAtLeast(
                            all,
                            all,
                            "fixings",
                            "Hand and tool get to all " + Wording.count(all, "fixing") + " at their time."));
        }
    }

    private void hidden(
            Scene scene,
            ToolReach reach,
            PlacedUnit unit,
            BitSet gone,
            List<ToolReach.Access> hidden,
            int count,
            Rows rows) {
        List<PlacedUnit> hiding = new ArrayList<>();
        reach.hiding(unit, gone).stream().forEach(i -> hiding.add(scene.units().get(i)));
        List<String> fixings =
                hidden.stream().map(one -> one.fixing().fixing().name()).toList();
        List<String> names = hiding.stream().map(PlacedUnit::name).toList();
        String why = names.isEmpty()
                ? ": there is no room for a forearm at any side within reach"
                : " past " + Wording.list(names);
        rows.add(rows.draft(this)
                .units(unit)
                .units(hiding.toArray(PlacedUnit[]::new))
                .place(unit.outline(Situation.ON_STATION))
                .state("while bolting down")
                .mend(
                        names.isEmpty()
                                ? "Leave room beside it, or state the tool zone of the fixing in the catalog."
                                : "Bring it in before them, or leave room beside it.")
                .atLeast(
                        count,
                        count - hidden.size(),
                        "fixings",
                        "Hand and tool do not get to " + Wording.list(fixings) + " of " + unit.name() + why + "."));
    }
}
