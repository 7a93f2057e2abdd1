package org.shelterwright.layouts.ledger.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.fit.HungLoad.OnFixing;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * What the dead weight of a unit on a wall or under the roof puts on any one hard point is within its strength. One row
 * for each unit: its governing fixing in its governing situation. The formula is that of {@link HungLoad}.
 *
 * <p>Source: the strength of the hard points of the body in the catalog.
 */
abstract class FixingLoad extends NamedLimit implements Limit.OfTotals {
    private final String kind;

    FixingLoad(String id, String kind) {
        super(
                id,
                Subject.FIT,
                "Wall and roof load: " + kind,
                Severity.HARD,
                Source.stated("Catalog", "strength of the hard points of the body"),
                "No unit hangs on a wall or under the roof.");
        this.kind = kind;
    }

    abstract double demandN(OnFixing load);

    abstract @Nullable Double capacityN(Strength strength);

    @Override
    public void assess(Scene scene, Rows rows) {
        Map<String, Row> worst = new LinkedHashMap<>();
        for (HungLoad load : HungLoad.all(scene)) {
            worst.merge(load.unit().id(), row(rows, load), FixingLoad::worse);
        }
        worst.values().forEach(rows::add);
    }

    private Row row(Rows rows, HungLoad load) {
        RowDraft draft = rows.draft(this, "Wall and roof load of " + load.unit().name() + ": " + kind)
                .units(load.unit())
                .place(load.unit().outline(load.situation()))
                .state(Wording.situation(load.situation()));
        if (!load.missing().isEmpty()) {
            return Unstated.row(draft, load.missing());
        }
        if (load.fixings().isEmpty()) {
            return draft.mend("State the fixings of item " + load.unit().item().id() + ".")
                    .notAssessed(load.unit().name() + " states no fixing for this surface.");
        }
        return governing(draft, load, load.fixings());
    }

    private Row governing(RowDraft draft, HungLoad load, List<OnFixing> fixings) {
        OnFixing worst = fixings.get(0);
        double worstCapacityN = 0;
        double worstUse = -1;
        for (OnFixing fixing : fixings) {
            HardPoint hardPoint = fixing.hardPoint();
            if (hardPoint == null) {
                return draft.notAssessed("Fixing " + fixing.fixing().fixing().name() + " of "
                        + load.unit().name() + " lands on no hard point.");
            }
            Double capacityN = capacityN(hardPoint.strength());
            if (capacityN == null) {
                return draft.mend("State the strength of " + hardPoint.name() + " in the body.")
                        .notAssessed("The " + kind + " strength of " + hardPoint.name() + " is not stated.");
            }
            double use = demandN(fixing) / Math.max(capacityN, 1e-9);
            if (use > worstUse) {
                worst = fixing;
                worstCapacityN = capacityN;
                worstUse = use;
            }
        }
        String text = "Fixing " + worst.fixing().fixing().name() + " of "
                + load.unit().name() + " governs, at rest.";
        if (demandN(worst) > worstCapacityN) {
            draft.mend("Share the weight over more or stronger hard points, or mount it on the floor.");
        }
        return draft.atMost(demandN(worst), worstCapacityN, "N", text);
    }

    /** The earlier verdict is the worse one; among equal verdicts the higher use. */
    private static Row worse(Row a, Row b) {
        int byVerdict = a.verdict().compareTo(b.verdict());
        if (byVerdict != 0 || a.verdict() == Verdict.NOT_ASSESSED) {
            return byVerdict <= 0 ? a : b;
        }
        return value(a.use()) >= value(b.use()) ? a : b;
    }

    private static double value(@Nullable Double use) {
        return use == null ? 0 : use;
    }
}
