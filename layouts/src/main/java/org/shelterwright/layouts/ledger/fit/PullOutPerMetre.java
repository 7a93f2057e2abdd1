package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.fit.HungLoad.OnFixing;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * What hangs on any one metre of a rail or drillable zone: max over windows of 1 m along it (ends included) of the sum of
 * the pulls of {@link HungLoad} &lt;= its pull-out strength per metre (N). One row for each hard point that bears a pull.
 *
 * <p>Source: the strength of the hard points of the body in the catalog.
 */
final class PullOutPerMetre extends NamedLimit implements Limit.OfTotals {
    PullOutPerMetre() {
        super(
                "fit.hung-per-metre",
                Subject.FIT,
                "Wall and roof load per metre",
                Severity.HARD,
                Source.stated("Catalog", "strength of the hard points of the body"),
                "No unit hangs on a wall or under the roof.");
    }

    private record Pull(PlacedUnit unit, int at, double pullN) {}

    private record Window(double pullN, Set<String> units, Situation situation) {}

    @Override
    public void assess(Scene scene, Rows rows) {
        Map<HardPoint, Window> worst = new LinkedHashMap<>();
        Set<String> missing = new LinkedHashSet<>();
        for (Situation situation : Situation.values()) {
            pulls(scene, situation, missing)
                    .forEach((hardPoint, all) ->
                            worst.merge(hardPoint, heaviest(all, situation), (a, b) -> b.pullN() > a.pullN() ? b : a));
        }
        List<HungLoad> hung = HungLoad.all(scene);
        if (worst.isEmpty() && !hung.isEmpty()) {
            rows.add(nothingPulls(rows.draft(this), hung, missing));
        }
        worst.forEach((hardPoint, window) -> rows.add(row(rows, hardPoint, window, missing)));
    }

    private static Row nothingPulls(RowDraft draft, List<HungLoad> hung, Set<String> missing) {
        if (!missing.isEmpty()) {
            return Unstated.row(draft, List.copyOf(missing));
        }
        boolean landed = hung.stream()
                .allMatch(load -> !load.fixings().isEmpty()
                        && load.fixings().stream().allMatch(fixing -> fixing.hardPoint() != null));
        return landed
                ? draft.held("What hangs pulls on no fixing.")
                : draft.notAssessed("What hangs lands on no hard point, so none can be judged by the metre.");
    }

    private static Map<HardPoint, List<Pull>> pulls(Scene scene, Situation situation, Set<String> missing) {
        Map<HardPoint, List<Pull>> pulls = new LinkedHashMap<>();
        for (HungLoad load : HungLoad.all(scene)) {
            if (load.situation() == situation) {
                missing.addAll(load.missing());
                for (OnFixing fixing : load.fixings()) {
                    HardPoint hardPoint = fixing.hardPoint();
                    if (hardPoint != null && fixing.pullN() > 0) {
                        int at = fixing.fixing().at().along(Landing.lengthwise(hardPoint));
                        pulls.computeIfAbsent(hardPoint, key -> new ArrayList<>())
                                .add(new Pull(load.unit(), at, fixing.pullN()));
                    }
                }
            }
        }
        return pulls;
    }

    private Row row(Rows rows, HardPoint hardPoint, Window window, Set<String> missing) {
        RowDraft draft = rows.draft(this, "Load per metre of " + hardPoint.name())
                .units(List.copyOf(window.units()))
                .place(hardPoint.outline())
                .state(Wording.situation(window.situation()));
        Double capacityN = hardPoint.strength().pullOutPerMetreN();
        if (capacityN == null) {
            return draft.mend("State the strength of " + hardPoint.name() + " in the body.")
                    .notAssessed("The pull-out strength per metre of " + hardPoint.name() + " is not stated.");
        }
        if (!missing.isEmpty()) {
            return Unstated.row(draft, List.copyOf(missing));
        }
        if (window.pullN() > capacityN) {
            draft.mend("Spread what hangs there over a greater length or several rails.");
        }
        return draft.atMost(
                window.pullN(),
                capacityN,
                "N",
                Wording.list(List.copyOf(window.units())) + " pull on the most laden metre, at rest.");
    }

    private static Window heaviest(List<Pull> pulls, Situation situation) {
        Window heaviest = new Window(-1, Set.of(), situation);
        for (Pull first : pulls) {
            double sumN = 0;
            Set<String> units = new LinkedHashSet<>();
            for (Pull pull : pulls) {
                if (pull.at() >= first.at() && pull.at() - first.at() <= Lengths.M) {
                    sumN += pull.pullN();
                    units.add(pull.unit().id());
                }
            }
            if (sumN > heaviest.pullN()) {
                heaviest = new Window(sumN, units, situation);
            }
        }
        return heaviest;
    }
}
