package org.shelterwright.layouts.ledger.transport.securing;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.Gravity;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * Count and strength of tiedowns where 49 CFR 393 applies. Count (393.110): an article not blocked forward needs one up to 5 ft and
 * 1 100 lb, two up to 5 ft above 1 100 lb or up to 10 ft, one more for each further 10 ft or part; blocked forward one for each 10 ft
 * or part. Strength (393.106(d)): the working load limits together are at least half the weight; a tiedown from an anchor to the article
 * counts half, one over it in full. The working load limit of a tiedown is the least of its parts and of the points that it goes to
 * (393.108(a), from memory).
 */
final class UsTiedowns extends LegLimit {
    private static final double FOOT = 0.3048;
    private static final double LIGHT_KG = 1100 * 0.45359237;

    UsTiedowns() {
        super(
                "tiedowns-us",
                "Tiedowns (49 CFR 393)",
                Source.quoted("49 CFR 393.106 and 393.110", "number and aggregate working load limit of tiedowns"),
                "49 CFR 393 is not among the rules of this leg.");
    }

    /** The number that 393.110 asks. */
    static int needed(double lengthM, double massKg, boolean blockedForward) {
        double feet = lengthM / FOOT;
        double beyond = 1e-9;
        if (blockedForward) {
            return (int) Math.max(1, Math.ceil(feet / 10 - beyond));
        }
        if (feet <= 5 + beyond) {
            return massKg <= LIGHT_KG ? 1 : 2;
        }
        return 2 + (int) Math.max(0, Math.ceil((feet - 10) / 10 - beyond));
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        if (leg.rules().valueOr(Figure.US_TIEDOWNS, 0) != 1) {
            return;
        }
        for (PlacedLoad load : leg.loads()) {
            if (!load.load().packed()) {
                Bundle.of(leg, load).forEach(bundle -> assess(leg, bundle, rows));
            }
        }
    }

    private void assess(LegScene leg, Bundle bundle, Rows rows) {
        String unknown = bundle.unknown().orElse(null);
        if (unknown != null) {
            rows.add(draft(leg, rows, "Tiedowns, " + bundle.title())
                    .units(bundle.ids())
                    .notAssessed(unknown));
            return;
        }
        Box box = bundle.box();
        boolean blocked = Blocking.of(bundle, Face.FRONT).holdsN() > 0;
        int needed = needed(Lengths.metres(box.x1() - box.x0()), bundle.kg(), blocked);
        List<Rope> ropes = bundle.ropes();
        rows.add(draft(leg, rows, "Number of tiedowns, " + bundle.title())
                .units(bundle.ids())
                .mend(ropes.size() < needed ? "Add tiedowns." : null)
                .countedAtLeast(
                        needed,
                        ropes.size(),
                        "tiedowns",
                        bundle.name() + " has " + Wording.count(ropes.size(), "tiedown")
                                + "; its length and weight ask for " + needed
                                + (blocked ? " when blocked forward." : ".")));
        RowDraft draft =
                draft(leg, rows, "Working load limits, " + bundle.title()).units(bundle.ids());
        double limit = 0;
        for (Rope rope : ropes) {
            Double bears = rope.bearsN();
            if (bears == null) {
                rows.add(draft.notAssessed(rope.unknown().orElseThrow()));
                return;
            }
            limit += bears * (rope.direct() ? 0.5 : 1);
        }
        double half = bundle.kg() * Gravity.STANDARD / 2;
        rows.add(draft.mend(limit < half ? "Add tiedowns, or take stronger ones." : null)
                .atLeast(
                        half / 1000,
                        limit / 1000,
                        "kN",
                        "The tiedowns of " + bundle.name() + " together count " + Math.round(limit / 100) / 10.0
                                + " kN; half its weight is " + Math.round(half / 100) / 10.0 + " kN."));
    }
}
