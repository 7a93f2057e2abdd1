package org.shelterwright.layouts.ledger.racks;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.rack.Airflow;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Cooling air goes one way through a bay: each piece blows as the bay does, and, where air goes from front to rear or back, no
 * height unit is open through which it would flow back. Demand: pieces that blow otherwise and open units, of 0.
 *
 * <p>Source: common practice of cooling racks: front to rear, free units closed by blanking panels.
 */
final class AirPath extends BayLimit {
    AirPath() {
        super(
                "racks.air-path",
                "Air path",
                Severity.MEDIUM,
                Source.commonPractice("One way of air through a rack, free units closed by blanking panels"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        Airflow flow = bay.bay().airflow();
        List<String> unknown = new ArrayList<>();
        List<String> against = new ArrayList<>();
        boolean moved = false;
        for (InRack piece : bay.working()) {
            Airflow own = piece.mount().airflow();
            if (own == null) {
                unknown.add(piece.name());
            } else {
                moved |= own != Airflow.STILL;
                if (flow != null && !own.goesWith(flow)) {
                    against.add(piece.name());
                }
            }
        }
        RowDraft draft = draft(rows, bay);
        if (!unknown.isEmpty()) {
            rows.add(missing(draft, "airflow", unknown));
        } else if (moved && flow == null) {
            rows.add(draft.mend("Give the airflow of the bay in item " + bay.unit().item().id() + ".")
                    .notAssessed("Which way air goes through " + bay.name() + " is not stated."));
        } else {
            boolean level = flow == Airflow.FRONT_TO_REAR || flow == Airflow.REAR_TO_FRONT;
            int open = moved && level ? bay.bay().units() - bay.taken().cardinality() : 0;
            rows.add(
                    against.isEmpty() && open == 0
                            ? draft.held("Air goes one way through " + bay.name() + ".")
                            : draft.mend(against.isEmpty()
                                            ? "Close the open units with blanking panels."
                                            : "Turn them round, or put them into a rack whose air goes their way.")
                                    .atMost(against.size() + open, 0, "", sentence(bay, against, open)));
        }
    }

    private static String sentence(FilledBay bay, List<String> against, int open) {
        String blow = against.isEmpty()
                ? ""
                : Wording.list(against) + " in " + bay.name() + (against.size() == 1 ? " blows" : " blow")
                        + " against its air. ";
        return (blow + (open == 0 ? "" : open + " U of " + bay.name() + " are open, and air flows back through them."))
                .trim();
    }
}
