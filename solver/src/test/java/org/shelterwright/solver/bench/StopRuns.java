package org.shelterwright.solver.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;

/** How long a search goes on after it was asked to stop: until the result is there, its checks from scratch included. */
final class StopRuns {
    private static final int RUNS = 20;
    private static final int THREADS = 2;

    private final Setting setting;

    StopRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        Catalog catalog = BuiltInCatalog.read();
        Fitter fitter = new StandardFitter(Checker.standard());
        Table table = new Table("sample", "stops", "middle (ms)", "nine in ten (ms)", "longest (ms)");
        for (String sample : List.of("river-post", "water-lab")) {
            Brief brief = LayoutFormats.BRIEF.open(Samples.brief(sample)).value();
            Layout question = Layout.empty(brief, Parts.of(brief, catalog));
            List<Double> waits = new ArrayList<>();
            for (int run = 0; run < RUNS; run++) {
                double waited = stopped(fitter, question, setting.seed() + run, 300 + 200L * run);
                if (run > 0) {
                    waits.add(waited);
                }
            }
            Collections.sort(waits);
            table.add(
                    sample,
                    waits.size(),
                    waits.get(waits.size() / 2),
                    waits.get(waits.size() * 9 / 10),
                    waits.get(waits.size() - 1));
        }
        return """
                # Stopping a search

                Each search runs on two threads from nothing placed and is asked to stop 0.5 to 4.1 s after its start. Measured is
                the time until its result is there: lanes ended, the best told apart, and each checked from scratch. A first search
                to warm up is not counted.

                %s
                Date: %s.

                %s""".formatted(machine.text(), setting.date(), table.text());
    }

    private static double stopped(Fitter fitter, Layout question, long seed, long afterMs) {
        StopSignal stop = new StopSignal();
        FitRequest request = new FitRequest(question, seed, Budget.time(Duration.ofMinutes(1)), THREADS, 3);
        CompletableFuture<FitResult> result =
                CompletableFuture.supplyAsync(() -> fitter.fit(request, progress -> {}, stop));
        try {
            Thread.sleep(afterMs);
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
        }
        long start = System.nanoTime();
        stop.stop();
        result.join();
        return (System.nanoTime() - start) / 1e6;
    }
}
