package org.shelterwright.solver.bench.exact;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;

/** Searches with a general exact solver that is given the same rules, candidates, soft level and start. */
public final class ExactSearch {
    private final FitProblem problem;

    /**
     * What was found.
     *
     * @param layout {@code null} if none was
     * @param proven whether it is proven to be the best there is, or that there is none
     * @param firstSeconds when the first was found; {@code null} if none was
     */
    public record Found(
            @Nullable Layout layout,
            boolean proven,
            @Nullable Double firstSeconds) {}

    public ExactSearch(FitProblem problem) {
        this.problem = problem;
    }

    /**
     * Searches.
     *
     * @param start a spot for each slot, given to the solver as a hint
     */
    public Found run(@Nullable Spot[] start, long seed, Duration time, int workers) {
        Loader.loadNativeLibraries();
        CpModel model = new CpModel();
        List<List<Way>> ways = new ArrayList<>();
        for (Slot slot : problem.slots()) {
            ways.add(Way.of(slot, problem));
        }
        long step = step(ways);
        List<ExactUnit> units = new ArrayList<>();
        for (Slot slot : problem.slots()) {
            ExactUnit unit = new ExactUnit(model, slot.unit().id(), ways.get(slot.index()), step);
            Spot hint = start[slot.index()];
            if (hint != null) {
                unit.hint(model, hint);
            }
            units.add(unit);
        }
        new Separations(model, units, step).add();
        return solve(model, units, step, seed, time.toMillis() / 1e3, workers);
    }

    /**
     * Looks for any fit first and then betters it: given the objective at once, the solver finds a first fit far later or
     * not at all.
     */
    private Found solve(CpModel model, List<ExactUnit> units, long step, long seed, double seconds, int workers) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(workers).setRandomSeed((int) seed).setMaxTimeInSeconds(seconds);
        CpSolverStatus status = solver.solve(model);
        double firstSeconds = solver.wallTime();
        if (!found(status)) {
            return new Found(null, status == CpSolverStatus.INFEASIBLE, null);
        }
        Spot[] first = spots(solver, units);
        hint(model, solver);
        model.minimize(new SoftTerms(model, problem, units, step).build());
        solver.getParameters().setFixVariablesToTheirHintedValue(true);
        if (found(solver.solve(model))) {
            hint(model, solver);
        }
        solver.getParameters()
                .setFixVariablesToTheirHintedValue(false)
                .setMaxTimeInSeconds(Math.max(0.1, seconds - firstSeconds));
        CpSolverStatus better = solver.solve(model);
        Spot[] best = found(better) ? spots(solver, units) : first;
        return new Found(problem.layout(best), better == CpSolverStatus.OPTIMAL, firstSeconds);
    }

    /** Proposes the whole of the last solution as the start of the next search. */
    private static void hint(CpModel model, CpSolver solver) {
        List<Long> values = solver.response().getSolutionList();
        var hint = model.getBuilder().getSolutionHintBuilder().clear();
        for (int i = 0; i < values.size(); i++) {
            hint.addVars(i).addValues(values.get(i));
        }
    }

    private static boolean found(CpSolverStatus status) {
        return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    }

    private static Spot[] spots(CpSolver solver, List<ExactUnit> units) {
        return units.stream().map(unit -> unit.spot(solver)).toArray(Spot[]::new);
    }

    /** The greatest length (µm) of which all coordinates are multiples. */
    private static long step(List<List<Way>> ways) {
        long step = 0;
        for (List<Way> some : ways) {
            for (Way way : some) {
                for (int axis = 0; axis < 3; axis++) {
                    for (long value : way.coordinates(axis)) {
                        step = gcd(step, value);
                    }
                }
                for (int value : way.option().station().solids()) {
                    step = gcd(step, value);
                }
                for (int value : way.option().station().zones()) {
                    step = gcd(step, value);
                }
            }
        }
        return Math.max(1, step);
    }

    private static long gcd(long a, long b) {
        return b == 0 ? Math.abs(a) : gcd(b, a % b);
    }
}
