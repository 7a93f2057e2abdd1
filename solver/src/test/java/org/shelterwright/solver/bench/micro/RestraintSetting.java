package org.shelterwright.solver.bench.micro;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.DuplicateUnits;
import org.shelterwright.layouts.edit.SetRuleSets;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.restraint.Fasteners;
import org.shelterwright.layouts.ledger.restraint.RestraintLimits;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.samples.Samples;

/** The bolted units of a sample, copied onto the same places until there are so many, under the load cases of road, rail and sea. */
final class RestraintSetting {
    private static final List<String> CASES = List.of("shelter-common", "road-eu", "road-us", "rail-ctu", "sea-ctu");

    private RestraintSetting() {}

    static Checker checker() {
        return new Checker(new LimitBook(RestraintLimits.all(Fasteners.builtIn())), RuleSets.builtIn());
    }

    static Layout layout(int units) {
        Layout layout = new SetRuleSets(CASES)
                .apply(LayoutFiles.read(Samples.layout("river-post").orElseThrow())
                        .layout());
        List<String> bolted = layout.brief().units().stream()
                .filter(one -> !layout.parts().items().get(one.item()).fixings().isEmpty())
                .map(one -> one.id())
                .toList();
        Layout grown = layout;
        int there = bolted.size();
        while (there < units) {
            List<String> more = new ArrayList<>(bolted.subList(0, Math.min(bolted.size(), units - there)));
            grown = new DuplicateUnits(more, Point.ORIGIN).apply(grown);
            there += more.size();
        }
        return grown;
    }
}
