package org.shelterwright.solver.bench;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.Locale;
import java.util.function.LongSupplier;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.LoadRequest;
import org.shelterwright.solver.load.LoadResult;
import org.shelterwright.solver.load.StandardLoader;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.set.LoadSet.SetProblem;

/** How a load grows with the number of pieces: the same problem in rooms of 1, 2, 4 and 8 times the length. */
final class GrowthRuns {
    private static final int[] TIMES = {1, 2, 4, 8};

    private final LoadSetting setting;

    GrowthRuns(LoadSetting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        Table table = new Table(
                "support",
                "class",
                "length, times",
                "kinds",
                "pieces",
                "limit (s)",
                "volume (%)",
                "spaces looked at in a second (thousand)");
        load(LoadRuns.read(setting.classes().get(0)).problem(setting.from(), ""), 1, Support.FULL, 1);
        for (Support support : setting.supports()) {
            for (int set : setting.classes()) {
                SetProblem problem = LoadRuns.read(set).problem(setting.from(), "set");
                for (int times : TIMES) {
                    for (double seconds : setting.seconds()) {
                        LoadResult result = load(problem, times, support, seconds);
                        table.add(
                                LoadRuns.name(support),
                                set,
                                times,
                                problem.kinds().size(),
                                times * problem.pieces(),
                                seconds,
                                LoadRuns.hundredths(100 * result.share()),
                                result.moves() / 1e3 / seconds);
                        if (setting.verbose()) {
                            System.err.printf(
                                    Locale.ROOT,
                                    "%d x%d %s %.0f s: %.2f%n",
                                    set,
                                    times,
                                    support,
                                    seconds,
                                    100 * result.share());
                        }
                    }
                }
            }
        }
        return """
                # Growth with the number of pieces

                Problem %d of a class in rooms of 1, 2, 4 and 8 times the length, with as many times the pieces; one thread, limits
                in %s. With more pieces a greedy completion takes longer, so fewer loads are tried in the same time.

                %s
                Seed %d. Date: %s.

                %s""".formatted(
                        setting.from(),
                        setting.cpu() ? "processor time" : "wall-clock time",
                        machine.text(),
                        setting.seed(),
                        setting.date(),
                        table.text());
    }

    private LoadResult load(SetProblem problem, int times, Support support, double seconds) {
        LongSupplier clock =
                setting.cpu() ? ManagementFactory.getThreadMXBean()::getCurrentThreadCpuTime : System::nanoTime;
        Size room = problem.room();
        LoadProblem longer = LoadProblem.of(
                new Size(times * room.x(), room.y(), room.z()),
                problem.kinds().stream()
                        .map(kind -> kind.withCount(times * kind.count()))
                        .toList(),
                support);
        LoadResult result = new StandardLoader(clock)
                .load(
                        LoadRequest.single(
                                longer, setting.seed(), Budget.time(Duration.ofNanos((long) (seconds * 1e9)))),
                        progress -> {},
                        new StopSignal());
        if (!result.faults().isEmpty()) {
            throw new IllegalStateException(result.faults().toString());
        }
        return result;
    }
}
