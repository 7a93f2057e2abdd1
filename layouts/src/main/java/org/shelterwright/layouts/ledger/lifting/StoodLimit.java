package org.shelterwright.layouts.ledger.lifting;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.body.Provision.Use;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mass.GapRow;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.LoadStates;

/** A limit on the filled body carried from below, off its carrier: on forks or on stands. */
abstract class StoodLimit extends NamedLimit implements Limit.OfTotals {
    private final Use use;
    private final String absent;

    StoodLimit(String id, String title, Source source, Use use, String absent) {
        super(id, Subject.LIFTING, title, Severity.HARD, source, absent);
        this.use = use;
        this.absent = absent;
    }

    abstract Row row(RowDraft draft, Scene scene, LiftedMass lifted);

    @Override
    public void assess(Scene scene, Rows rows) {
        RowDraft draft = rows.draft(this);
        if (scene.body().provisions().stream().noneMatch(one -> one.use() == use)) {
            rows.add(draft.doesNotApply(absent));
            return;
        }
        LoadStates states = LoadStates.of(scene);
        List<Gap> gaps = LiftedMass.gaps(states);
        Optional<LiftedMass> lifted = gaps.isEmpty() ? LiftedMass.of(states) : Optional.empty();
        if (!gaps.isEmpty()) {
            rows.add(GapRow.of(draft, gaps));
        } else if (lifted.isEmpty()) {
            rows.add(draft.notAssessed(LiftedMass.NO_MASS));
        } else {
            rows.add(row(draft.state(lifted.get().state()), scene, lifted.get()));
        }
    }
}
