package org.shelterwright.solver.bench;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.StandardLoader;
import org.shelterwright.solver.load.audit.LoadAudit;
import org.shelterwright.solver.load.cars.CarsResult;
import org.shelterwright.solver.load.cars.FewestCars;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.set.LoadSet;
import org.shelterwright.solver.load.set.LoadSet.SetProblem;

/** The published set of 47 problems with several containers: how many are needed. */
final class CarRuns {
    private final LoadSetting setting;

    CarRuns(LoadSetting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        LoadSet set = LoadSet.read(InputFile.read(LoadRuns.folder().resolve("container-loading/imm-thpack9.txt")));
        Table totals = new Table(
                "support",
                "limit (s)",
                "problems",
                "containers, sum",
                "lower bounds, sum",
                "at the bound",
                "time, sum (s)");
        Table each = new Table("support", "problem", "kinds", "pieces", "containers", "at least", "time (s)");
        for (Support support : setting.supports()) {
            for (double seconds : setting.seconds()) {
                int sum = 0;
                int least = 0;
                int tight = 0;
                int problems = 0;
                double time = 0;
                for (SetProblem one : set.problems()) {
                    if (one.number() >= setting.from() && one.number() <= setting.to()) {
                        LoadProblem problem = one.with(support);
                        CarsResult result = new FewestCars(new StandardLoader(clock()), clock())
                                .load(
                                        problem,
                                        setting.seed(),
                                        Budget.time(Duration.ofNanos((long) (seconds * 1e9))),
                                        new StopSignal());
                        check(one.number(), problem, result);
                        problems++;
                        sum += result.loads().size();
                        least += result.atLeast();
                        tight += result.loads().size() == result.atLeast() ? 1 : 0;
                        time += result.elapsed().toMillis() / 1e3;
                        each.add(
                                LoadRuns.name(support),
                                one.number(),
                                one.kinds().size(),
                                one.pieces(),
                                result.loads().size(),
                                result.atLeast(),
                                result.elapsed().toMillis() / 1e3);
                        if (setting.verbose()) {
                            System.err.printf(
                                    Locale.ROOT,
                                    "%d %s: %d of at least %d, %.1f s%n",
                                    one.number(),
                                    support,
                                    result.loads().size(),
                                    result.atLeast(),
                                    result.elapsed().toMillis() / 1e3);
                        }
                    }
                }
                totals.add(LoadRuns.name(support), seconds, problems, sum, least, tight, time);
            }
        }
        return """
                # Loading several containers

                The 47 problems of Ivancic, Mathur and Mohanty (1989): everything must go, in as few equal containers as can be.
                The bound is that of volume and of pieces of which a container holds one only. A search ends when the bound is
                reached, or at its limit (%s) once the pass then begun is over. Every container is checked from scratch, and
                that all pieces are in. Published sums over the 47 problems, all from memory: 763 (Ivancic and others, 1989), 716
                (Eley, 2002), 694 (Lim and Zhang, 2005), 691 or 692 (from 2011 on).

                %s
                Problems %d to %d, one thread, seed %d. Date: %s.

                %s
                %s""".formatted(
                        setting.cpu() ? "processor time" : "wall-clock time",
                        machine.text(),
                        setting.from(),
                        setting.to(),
                        setting.seed(),
                        setting.date(),
                        totals.text(),
                        each.text());
    }

    private java.util.function.LongSupplier clock() {
        return setting.cpu() ? ManagementFactory.getThreadMXBean()::getCurrentThreadCpuTime : System::nanoTime;
    }

    private static void check(int number, LoadProblem problem, CarsResult result) {
        Map<Integer, Integer> loaded = new HashMap<>();
        for (Load load : result.loads()) {
            if (!LoadAudit.of(problem, load).isEmpty()) {
                throw new IllegalStateException("Problem " + number + ": " + LoadAudit.of(problem, load));
            }
            for (Stowed one : load.stowed()) {
                loaded.merge(one.kind(), 1, Integer::sum);
            }
        }
        for (int k = 0; k < problem.kinds().size(); k++) {
            CargoKind kind = problem.kinds().get(k);
            if (loaded.getOrDefault(k, 0) != kind.count()) {
                throw new IllegalStateException("Problem " + number + ": not all of kind " + kind.name() + " is in.");
            }
        }
    }
}
