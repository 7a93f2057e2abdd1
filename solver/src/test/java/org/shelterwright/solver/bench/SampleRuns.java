package org.shelterwright.solver.bench;

import java.time.Duration;
import java.util.List;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.StandardFitter;

/** The samples: when the search first holds every limit that it prices, and what it has at the end. */
final class SampleRuns {
    private static final List<String> SAMPLES = List.of("river-post", "water-lab");
    private static final Duration LIMIT = Duration.ofSeconds(30);
    private static final int THREADS = 2;
    private static final int SEEDS = 3;

    private final Setting setting;
    private final Checker checker = Checker.standard();

    SampleRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        Catalog catalog = BuiltInCatalog.read();
        Reach reach = new Reach(new StandardFitter(checker), THREADS);
        Table table = new Table(
                "sample",
                "units",
                "seed",
                "first with every limit held (s)",
                "end (s)",
                "CPU (s)",
                "moves (thousand)",
                "rows broken / not assessed",
                "soft (mm)");
        long end = setting.endNanos();
        for (String sample : SAMPLES) {
            Brief brief = LayoutFormats.BRIEF.open(Samples.brief(sample)).value();
            Layout question = Layout.empty(brief, Parts.of(brief, catalog));
            for (long seed = setting.seed(); seed < setting.seed() + SEEDS && System.nanoTime() < end; seed++) {
                Reach.Run run = reach.toTheEnd(question, seed, LIMIT);
                FitOption best = run.best();
                table.add(
                        sample,
                        brief.units().size(),
                        seed,
                        run.goalSeconds(),
                        run.seconds(),
                        run.cpuSeconds(),
                        run.moves() / 1e3,
                        best == null
                                ? "–"
                                : best.ledger().count(Verdict.BROKEN) + " / "
                                        + best.ledger().count(Verdict.NOT_ASSESSED),
                        best == null ? Double.NaN : best.score().soft() / 1e3);
            }
        }
        return """
                # Samples

                The briefs of the samples from nothing placed, with at most 30 s on two threads. The search ends earlier if
                several rounds bring nothing more. Broken and not assessed rows are those of a full check from scratch. The
                first run includes the start of the program.

                %s
                Date: %s.

                %s""".formatted(machine.text(), setting.date(), table.text());
    }
}
