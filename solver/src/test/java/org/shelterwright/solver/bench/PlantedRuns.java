package org.shelterwright.solver.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.planted.PlantedFit;

/** Planted fits: which share is solved in 30 s, and how long it takes, by size and slack. */
final class PlantedRuns {
    private static final int[] SIZES = {10, 20, 40, 60, 80};
    private static final double[] SLACKS = {0.20, 0.10, 0.05};
    private static final Duration LIMIT = Duration.ofSeconds(30);
    private static final int THREADS = 2;

    private final Setting setting;
    private final Reach reach = new Reach(new StandardFitter(Checker.standard()), THREADS);

    /** The runs of one size and slack. */
    private record Cell(int units, double slack, List<Reach.Run> solved, List<Long> unsolved) {
        int runs() {
            return solved.size() + unsolved.size();
        }

        /** Median of a figure of all runs; those not solved count as greater than all others. */
        double median(ToDoubleFunction<Reach.Run> figure) {
            double[] sorted = solved.stream().mapToDouble(figure).sorted().toArray();
            int middle = runs() / 2;
            return middle < sorted.length ? sorted[middle] : Double.NaN;
        }

        double slowest() {
            return solved.stream().mapToDouble(Reach.Run::seconds).max().orElse(Double.NaN);
        }
    }

    PlantedRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        List<Cell> cells = new ArrayList<>();
        for (int units : SIZES) {
            for (double slack : SLACKS) {
                cells.add(new Cell(units, slack, new ArrayList<>(), new ArrayList<>()));
            }
        }
        reach.toReach(PlantedFit.of(99, 20, 0.2).question(), 99, Duration.ofSeconds(5), Reach.ALL_MET);
        long end = setting.endNanos();
        long seed = setting.seed();
        for (; System.nanoTime() < end; seed++) {
            for (Cell cell : cells) {
                if (System.nanoTime() < end) {
                    one(cell, seed);
                }
            }
        }
        return text(machine, cells);
    }

    private void one(Cell cell, long seed) {
        PlantedFit fit = PlantedFit.of(seed, cell.units(), cell.slack());
        Reach.Run run = reach.toReach(fit.question(), seed, LIMIT, Reach.ALL_MET);
        FitOption best = run.best();
        boolean solved = run.reached() && best != null && best.ledger().count(Verdict.BROKEN) == 0;
        if (solved) {
            cell.solved().add(run);
        } else {
            cell.unsolved().add(seed);
        }
    }

    private String text(Machine machine, List<Cell> cells) {
        Table table = new Table(
                "units",
                "free",
                "runs",
                "solved in 30 s",
                "median (s)",
                "slowest solved (s)",
                "median CPU (s)",
                "median moves (thousand)",
                "seeds not solved");
        for (Cell cell : cells) {
            table.add(
                    cell.units(),
                    Math.round(100 * cell.slack()) + " %",
                    cell.runs(),
                    cell.runs() == 0 ? "–" : Math.round(100.0 * cell.solved().size() / cell.runs()) + " %",
                    cell.median(Reach.Run::seconds),
                    cell.slowest(),
                    cell.median(Reach.Run::cpuSeconds),
                    cell.median(run -> run.moves() / 1e3),
                    cell.unsolved().isEmpty() ? "" : cell.unsolved().toString());
        }
        return """
                # Planted fits

                Each brief is made by cutting two banks along the side walls of a body into pieces, so that a solution is
                known; it is not shown to the search. "Free" is the share of the area of the side walls that the known
                solution leaves free. Units on the floor bolt onto a hole pitch of 25 mm by 50 mm and keep a service zone of
                500 mm free in the aisle; others hang on the walls; some have knee spaces, and one in ten units stands in one.
                A walkway of 500 mm must lead from the door to every service zone. Solved: a full check from scratch finds
                no limit broken. The time runs from the call until that checked layout is there, in a program that has been
                running for some seconds. The medians count what was not solved as slower than all. CPU is what
                the whole process used, start of the compiler and collector included: it tells what a machine of its own would
                take.

                %s
                Two threads, limit 30 s a run. First seed %d. Date: %s.

                %s""".formatted(machine.text(), setting.seed(), setting.date(), table.text());
    }
}
