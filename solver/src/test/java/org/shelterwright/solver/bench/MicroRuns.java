package org.shelterwright.solver.bench;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.shelterwright.solver.bench.micro.FullLedger;
import org.shelterwright.solver.bench.micro.KernelMoves;
import org.shelterwright.solver.bench.micro.LedgerAfterMove;
import org.shelterwright.solver.bench.micro.ProcessorTime;
import org.shelterwright.solver.bench.micro.RestraintAfterMove;
import org.shelterwright.solver.bench.micro.RestraintGroups;
import org.shelterwright.solver.bench.micro.WalkwaySteps;

/** The processor time of single steps by size, taken with JMH in a process of its own. */
final class MicroRuns {
    private final Setting setting;

    MicroRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        Map<Integer, Double> full = scores(FullLedger.class);
        Map<Integer, Double> moved = scores(LedgerAfterMove.class);
        Map<Integer, Double> moves = scores(KernelMoves.class);
        Map<Integer, Double> walkways = scores(WalkwaySteps.class);
        Table table = new Table(
                "units",
                "full ledger (ms)",
                "ledger after one move (ms)",
                "moves of the search a second (thousand)",
                "widths of the ways to all service zones (µs)");
        full.forEach((units, ns) -> table.add(
                units,
                ns / 1e6,
                moved.getOrDefault(units, Double.NaN) / 1e6,
                1e6 / moves.getOrDefault(units, Double.NaN),
                walkways.getOrDefault(units, Double.NaN) / 1e3));
        Map<Integer, Double> groups = scores(RestraintGroups.class);
        Map<Integer, Double> group = scores(RestraintAfterMove.class);
        Table restraint = new Table("bolted units", "all rows of restraint (ms)", "restraint after one move (ms)");
        groups.forEach((units, ns) -> restraint.add(units, ns / 1e6, group.getOrDefault(units, Double.NaN) / 1e6));
        return """
                # Single steps

                On known solutions of planted fits (see planted.md) with a tenth of the walls free. The full ledger resolves
                the layout and answers every limit from scratch. The ledger after one move answers again what the move can
                touch. Ways to service zones: how wide the way from the door to each is, up to 500 mm, on a floor that is not
                that of last time. Moves are tried, not made: a round of annealing from hot to cold on one thread, with wishes. All
                figures are processor time of the whole process, the collector included, so that other work on the machine
                does not blur them: means over five seconds after three to warm up (the full ledger seven, that after a move ten: it
                takes so long until all limits are compiled), one process each.

                %s
                Date: %s.

                %s
                ## Restraint

                The bolted units of River Post, copied onto the same places until there are so many, under the load cases of
                road-eu, road-us, rail-ctu and sea-ctu together, in sixteen directions each and up and down where a case has
                them. What would mend a broken row is part of it.

                %s""".formatted(machine.text(), setting.date(), table.text(), restraint.text());
    }

    private static double processorNs(RunResult result) {
        return result.getSecondaryResults().entrySet().stream()
                .filter(entry -> entry.getKey().endsWith(ProcessorTime.RESULT))
                .findFirst()
                .orElseThrow()
                .getValue()
                .getScore();
    }

    /** Runs one class and gives the processor time of one operation (ns) by the number of units. */
    private static Map<Integer, Double> scores(Class<?> benchmark) {
        try {
            Collection<RunResult> results = new Runner(new OptionsBuilder()
                            .include(benchmark.getName().replace(".", "\\.") + "\\.")
                            .addProfiler(ProcessorTime.class)
                            .build())
                    .run();
            Map<Integer, Double> scores = new TreeMap<>();
            for (RunResult result : results) {
                scores.put(Integer.valueOf(result.getParams().getParam("units")), processorNs(result));
            }
            return scores;
        } catch (RunnerException failed) {
            throw new IllegalStateException("The measurement of " + benchmark.getSimpleName() + " failed.", failed);
        }
    }
}
