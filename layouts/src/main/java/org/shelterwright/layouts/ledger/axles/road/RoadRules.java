package org.shelterwright.layouts.ledger.axles.road;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.RuleSet.AxleRules;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.VehicleLoads;

/** Road rules of one region, held on the road only where the brief chooses them and names a carrier. */
abstract class RoadRules extends NamedLimit implements Limit.OfTotals {
    private final AxleRules rules;

    RoadRules(String id, AxleRules rules, String title, Source source, String notAsked) {
        super(id, Subject.AXLES, title, Severity.HARD, source, notAsked);
        this.rules = rules;
    }

    abstract void assessChosen(Scene scene, Rows rows);

    @Override
    public void assess(Scene scene, Rows rows) {
        if (!scene.rules().axleRules().contains(rules) || scene.carrier().isEmpty()) {
            return;
        }
        for (VehicleLoads vehicle : VehicleLoads.all(scene)) {
            if (vehicle.whyNoAxleLoads().isPresent()) {
                rows.add(rows.draft(this)
                        .notAssessed("The axle loads of " + vehicle.vehicle().name() + " cannot be told: "
                                + vehicle.whyNoAxleLoads().orElse("") + "."));
                return;
            }
        }
        assessChosen(scene, rows);
    }

    /** A size outside (µm) against the one allowed. */
    static Row size(RowDraft draft, int size, double allowedMm, String what, @Nullable Source source) {
        double mm = size / 1000.0;
        if (source != null) {
            draft.source(source);
        }
        if (mm > allowedMm) {
            draft.mend("Choose a smaller body or carrier.");
        }
        return draft.state("on the road")
                .atMost(
                        mm,
                        allowedMm,
                        "mm",
                        what + " " + Amounts.number(mm, 1) + " mm outside; allowed are " + Amounts.number(allowedMm, 1)
                                + " mm.");
    }

    /** The vehicle names of a list of axles, each once. */
    static String vehicles(List<RoadAxle> axles) {
        String first = axles.get(0).vehicle().vehicle().name();
        String last = axles.get(axles.size() - 1).vehicle().vehicle().name();
        return first.equals(last) ? first : first + " and " + last;
    }
}
