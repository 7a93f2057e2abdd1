package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.tables.Table;
import org.shelterwright.layouts.ledger.lifting.LiftPlan;
import org.shelterwright.layouts.ledger.lifting.LiftPlan.Leg;

/** The legs of the sling as a table. */
final class LiftingTable {
    private LiftingTable() {}

    static Table of(Optional<LiftPlan> plan) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        plan.ifPresent(made -> {
            for (Leg leg : made.legs()) {
                rows.add(Arrays.asList(
                        leg.eye().name(),
                        made.massKg(),
                        leg.share(),
                        leg.angle(),
                        leg.lengthM() * 1000,
                        leg.forceN() < Double.MAX_VALUE ? leg.forceN() : null,
                        leg.eye().ratingN(),
                        made.state()));
            }
        });
        return new Table(
                "Lifting",
                List.of(
                        "lifting eye",
                        "mass kg",
                        "share",
                        "angle above the level °",
                        "leg length mm",
                        "force in the leg N",
                        "rating N",
                        "load state"),
                rows);
    }
}
