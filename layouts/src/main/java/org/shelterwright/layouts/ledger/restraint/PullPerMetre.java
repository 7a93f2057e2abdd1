package org.shelterwright.layouts.ledger.restraint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.fit.Landing;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * What all units pull at once on any one metre of a rail, raster or drillable zone under one push: the greatest sum over windows of
 * 1 m along it (ends included) ≤ its pull-out strength per metre (N). One row for each hard point that takes a fixing.
 *
 * <p>Source: the strength of the hard points of the body in the catalog.
 */
final class PullPerMetre extends NamedLimit implements Limit.OfTotals {
    private final Fasteners fasteners;

    PullPerMetre(Fasteners fasteners) {
        super(
                "restraint.per-metre",
                Subject.RESTRAINT,
                "Pull per metre of a hard point",
                Severity.HARD,
                Source.stated("Catalog", "strength of the hard points of the body"),
                "No unit is bolted to a hard point.");
        this.fasteners = fasteners;
    }

    /** A fixing on a hard point. */
    private record Pull(Holding holding, int fixing, int at) {
        double newtons(int push) {
            Solved solved = holding.solved();
            return solved == null || solved.unheld() != null ? 0 : solved.pullN()[push][fixing];
        }
    }

    private record Window(double pullN, int push, int from, int to) {}

    @Override
    public void assess(Scene scene, Rows rows) {
        Holdings holdings = Holdings.of(scene, fasteners);
        if (holdings.pushes().isEmpty()) {
            rows.add(NoLoadCase.row(rows, this));
            return;
        }
        List<String> unsolved = new ArrayList<>();
        Map<String, List<Pull>> pulls = new LinkedHashMap<>();
        Map<String, HardPoint> hardPoints = new LinkedHashMap<>();
        for (Holding holding : holdings.all()) {
            if (holding.solved() == null) {
                unsolved.add(holding.unit().name());
            }
            for (int i = 0; i < holding.fixings().size(); i++) {
                HeldFixing fixing = holding.fixings().get(i);
                HardPoint hardPoint = fixing.hardPoint();
                if (hardPoint != null) {
                    int at = fixing.placed().at().along(Landing.lengthwise(hardPoint));
                    hardPoints.put(hardPoint.name(), hardPoint);
                    pulls.computeIfAbsent(hardPoint.name(), key -> new ArrayList<>())
                            .add(new Pull(holding, i, at));
                }
            }
        }
        hardPoints.forEach((name, hardPoint) ->
                rows.add(row(rows, hardPoint, pulls.getOrDefault(name, List.of()), holdings.pushes(), unsolved)));
    }

    private Row row(Rows rows, HardPoint hardPoint, List<Pull> all, List<Push> pushes, List<String> unsolved) {
        List<Pull> sorted =
                all.stream().sorted(Comparator.comparingInt(Pull::at)).toList();
        Window most = heaviest(sorted, pushes.size());
        Set<String> ids = new LinkedHashSet<>();
        Set<String> names = new LinkedHashSet<>();
        for (Pull pull : sorted.subList(most.from(), most.to())) {
            if (pull.newtons(most.push()) > 0) {
                ids.add(pull.holding().unit().id());
                names.add(pull.holding().unit().name());
            }
        }
        RowDraft draft = rows.draft(this, "Pull per metre of " + hardPoint.name())
                .units(List.copyOf(ids))
                .place(hardPoint.outline())
                .state(pushes.get(most.push()).text());
        Double capacityN = hardPoint.strength().pullOutPerMetreN();
        if (capacityN == null) {
            return draft.mend("State the strength of " + hardPoint.name() + " in the body.")
                    .notAssessed("The pull-out strength per metre of " + hardPoint.name() + " is not stated.");
        }
        if (!unsolved.isEmpty() && most.pullN() <= capacityN) {
            return draft.mend("State what is missing for their fixings.")
                    .notAssessed("The pull of " + Wording.list(unsolved) + " is not known.");
        }
        if (most.pullN() > capacityN) {
            draft.mend("Spread the units that pull there over a greater length or several rails.");
        }
        String who = names.isEmpty() ? "Nothing pulls" : Wording.list(List.copyOf(names)) + " together pull";
        String text = who + " with " + Holding.newtons(most.pullN()) + " on the most laden metre of " + hardPoint.name()
                + ", which bears " + Holding.newtons(capacityN) + ".";
        return draft.atMost(most.pullN(), capacityN, "N", text);
    }

    /** The most laden window; its fixings are those from one place in the list to before another. */
    private static Window heaviest(List<Pull> sorted, int pushes) {
        Window heaviest = new Window(-1, 0, 0, 0);
        for (int push = 0; push < pushes; push++) {
            int from = 0;
            double sumN = 0;
            for (int to = 0; to < sorted.size(); to++) {
                sumN += sorted.get(to).newtons(push);
                while (sorted.get(to).at() - sorted.get(from).at() > Lengths.M) {
                    sumN -= sorted.get(from).newtons(push);
                    from++;
                }
                if (sumN > heaviest.pullN() * (1 + 1e-9)) {
                    heaviest = new Window(sumN, push, from, to + 1);
                }
            }
        }
        return heaviest.pullN() < 0 ? new Window(0, 0, 0, 0) : heaviest;
    }
}
