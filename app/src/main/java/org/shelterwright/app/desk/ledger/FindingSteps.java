package org.shelterwright.app.desk.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/** Goes from finding to finding, the worst first, and round again. Needs no window. */
public final class FindingSteps {
    private final Session session;

    public FindingSteps(Session session) {
        this.session = session;
    }

    /** Why there is no finding to go to; empty if there is one. */
    public Optional<String> obstacle() {
        return findings().isEmpty() ? Optional.of("Every limit is met with room to spare.") : Optional.empty();
    }

    public void worst() {
        List<Row> findings = findings();
        if (!findings.isEmpty()) {
            show(findings.get(0));
        }
    }

    /** Goes to the next finding, or for a negative step to the one before. */
    public void step(int by) {
        List<Row> findings = findings();
        if (findings.isEmpty()) {
            return;
        }
        int at = index(findings, session.selection().finding().get());
        int next = at < 0 ? (by > 0 ? 0 : findings.size() - 1) : Math.floorMod(at + by, findings.size());
        show(findings.get(next));
    }

    /** Looks at a row and selects the units that it concerns. */
    public void show(Row row) {
        session.selection().finding().set(Finding.of(row));
        List<String> units = new ArrayList<>(row.units());
        units.retainAll(session.now().layout().brief().units().stream()
                .map(unit -> unit.id())
                .toList());
        if (!units.isEmpty()) {
            session.selection().set(units);
        }
    }

    private List<Row> findings() {
        return session.now().ledger().rows().stream()
                .filter(row -> row.verdict() != Verdict.MET)
                .toList();
    }

    private static int index(List<Row> findings, @Nullable Finding looked) {
        for (int i = 0; i < findings.size(); i++) {
            if (Finding.of(findings.get(i)).equals(looked)) {
                return i;
            }
        }
        return -1;
    }
}
