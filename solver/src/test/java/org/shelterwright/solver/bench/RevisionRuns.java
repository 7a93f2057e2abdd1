package org.shelterwright.solver.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.insight.Grown;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.revision.Reuse;
import org.shelterwright.layouts.revision.Revision;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.study.ItemChange;
import org.shelterwright.solver.change.ChangeRequest;
import org.shelterwright.solver.change.ChangeResult;
import org.shelterwright.solver.change.SmallestChange;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;

/** What a smallest change of River Post keeps when two units come heavier and deeper, beside a fit from nothing. */
final class RevisionRuns {
    private static final int THREADS = 2;
    private static final long MOVES = 300_000;
    private static final long FRESH_MOVES = 2_000_000;

    /** How the two items come: battery box and sample refrigerator. */
    private record Case(int batteryMm, double batteryKg, int fridgeMm, double fridgeKg) {
        String text() {
            return String.format(
                    Locale.ROOT, "%d mm, %.0f kg; %d mm, %.0f kg", batteryMm, batteryKg, fridgeMm, fridgeKg);
        }
    }

    private static final List<Case> CASES =
            List.of(new Case(40, 12, 30, 9), new Case(150, 30, 110, 20), new Case(250, 40, 160, 25));

    private final Setting setting;
    private final Checker checker = Checker.standard();
    private final Fitter fitter = new StandardFitter(checker).withoutReasons();

    RevisionRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        Layout before =
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
        Table table = new Table(
                "deeper and heavier by: battery box; refrigerator",
                "how",
                "holes kept (%)",
                "cables kept (%)",
                "lie as they did (%)",
                "units moved",
                "searches",
                "rows broken",
                "time (s)");
        for (Case one : CASES) {
            Layout asked = asked(before, one);
            long start = System.nanoTime();
            ChangeResult found = new SmallestChange(checker, fitter)
                    .find(new ChangeRequest(before, asked, setting.seed(), MOVES, THREADS), new StopSignal());
            add(table, one, "smallest change", found.revision(), found.searches(), start);
            start = System.nanoTime();
            Layout empty = Layout.empty(asked.brief(), asked.parts()).withContents(asked.contents());
            Layout fresh = fitter.fit(
                            new FitRequest(empty, setting.seed(), Budget.moves(FRESH_MOVES), THREADS, 1),
                            progress -> {},
                            new StopSignal())
                    .options()
                    .get(0)
                    .layout();
            add(table, one, "fit from nothing", Revision.of(checker, before, fresh), 1, start);
        }
        return """
                # Smallest change beside a fit from nothing

                Written by the measurement `revision`. The layout of the sample *River Post* (27 units, 23 wires) after two of its units come deeper
                and heavier. A hole is kept if something is still bolted there; a cable if it is of the same type, long enough, and no more than a tenth
                or 300 mm too long. A smallest change breaks nothing that held before. %d moves for each of its searches, %d for the fit from nothing.

                %s
                Date: %s. Seed: %d.

                %s""".formatted(MOVES, FRESH_MOVES, machine.text(), setting.date(), setting.seed(), table.text());
    }

    private static Layout asked(Layout before, Case one) {
        Map<String, Item> items = new LinkedHashMap<>();
        put(items, before, new ItemChange("battery-box-24v", one.batteryMm * 1000, null, null, one.batteryKg));
        put(items, before, new ItemChange("sample-refrigerator", one.fridgeMm * 1000, null, null, one.fridgeKg));
        return Grown.items(before, items);
    }

    private static void put(Map<String, Item> items, Layout before, ItemChange change) {
        items.put(change.item(), change.of(before.parts().item(change.item())));
    }

    private static void add(Table table, Case one, String how, Revision revision, int searches, long start) {
        Reuse reuse = revision.reuse();
        long moved = revision.units().stream()
                .filter(unit ->
                        unit.turned() || unit.first() == null || !unit.first().equals(unit.second()))
                .count();
        table.add(
                one.text(),
                how,
                100 * reuse.holeShare(),
                100 * reuse.cableShare(),
                100.0 * reuse.cablesUntouched() / reuse.cables(),
                moved,
                searches,
                revision.ledgerAfter().count(Verdict.BROKEN),
                (System.nanoTime() - start) / 1e9);
    }
}
