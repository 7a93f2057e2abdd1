package org.shelterwright.solver.bench;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongSupplier;
import java.util.function.UnaryOperator;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.load.LoadRequest;
import org.shelterwright.solver.load.LoadResult;
import org.shelterwright.solver.load.StandardLoader;
import org.shelterwright.solver.load.model.BalanceLine;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Practice;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.set.LoadSet.SetProblem;

/** What practice costs: the single-container problems with masses, and one thing asked at a time. */
final class PracticeRuns {
    private final LoadSetting setting;

    PracticeRuns(LoadSetting setting) {
        this.setting = setting;
    }

    /** Things that practice asks, each as a change of a problem that has masses. */
    private static Map<String, UnaryOperator<LoadProblem>> asked() {
        Map<String, UnaryOperator<LoadProblem>> asked = new LinkedHashMap<>();
        asked.put("nothing", p -> p);
        asked.put(
                "centre of mass within 5 % of the length and 2 % of the width about the middle",
                p -> p.with(p.practice().withBalance(window(p, 0.05, 0.02))));
        asked.put(
                "centre of mass within 1 % of the length and of the width",
                p -> p.with(p.practice().withBalance(window(p, 0.01, 0.01))));
        asked.put(
                "bogies at 15 % and 85 % of the length, ratio at most 1.25",
                p -> p.with(p.practice().withBalance(bogies(p))));
        asked.put("mass limit of 80 % of all cargo", p -> p.with(p.practice().withMassLimit(0.8 * massKg(p))));
        asked.put(
                "mass limit of 80 % and centre within 5 % and 2 %",
                p -> p.with(p.practice().withMassLimit(0.8 * massKg(p)).withBalance(window(p, 0.05, 0.02))));
        asked.put("two stops", p -> stops(p, 2));
        asked.put("three stops", p -> stops(p, 3));
        asked.put(
                "stacking: a piece bears three times its own mass", p -> kinds(p, k -> k.withTopLoad(3 * k.massKg())));
        asked.put("every fifth kind fragile: nothing on top", p -> fragile(p));
        asked.put(
                "two gaps of 5 across for lashings",
                p -> p.with(p.practice()
                        .withKeptFree(List.of(
                                new Box(195, 0, 0, 200, p.room().y(), p.room().z()),
                                new Box(390, 0, 0, 395, p.room().y(), p.room().z())))));
        asked.put("kinds in pairs that go together or not at all", p -> together(p));
        return asked;
    }

    private static double massKg(LoadProblem p) {
        return p.kinds().stream().mapToDouble(k -> k.count() * k.massKg()).sum();
    }

    private static LoadProblem kinds(LoadProblem p, UnaryOperator<CargoKind> change) {
        return p.withKinds(p.kinds().stream().map(change).toList());
    }

    private static List<BalanceLine> window(LoadProblem p, double along, double across) {
        int x = p.room().x();
        int y = p.room().y();
        double scale = massKg(p) * x;
        return List.of(
                BalanceLine.centreAbove("front", Axis.X, (int) Math.ceil((0.5 - along) * x), scale),
                BalanceLine.centreBelow("rear", Axis.X, (int) Math.floor((0.5 + along) * x), scale),
                BalanceLine.centreAbove("right", Axis.Y, (int) Math.ceil((0.5 - across) * y), scale),
                BalanceLine.centreBelow("left", Axis.Y, (int) Math.floor((0.5 + across) * y), scale));
    }

    private static List<BalanceLine> bogies(LoadProblem p) {
        int near = (int) (0.15 * p.room().x());
        int far = (int) (0.85 * p.room().x());
        double tare = massKg(p) / 4;
        return List.of(
                BalanceLine.ratio("near to far", near, far, 1.25, tare, tare),
                BalanceLine.ratio("far to near", far, near, 1.25, tare, tare));
    }

    private static LoadProblem stops(LoadProblem p, int stops) {
        List<CargoKind> kinds = new ArrayList<>();
        for (int k = 0; k < p.kinds().size(); k++) {
            kinds.add(p.kinds().get(k).forStop(1 + k % stops));
        }
        return p.withKinds(kinds).with(p.practice().inOrderOfStops());
    }

    private static LoadProblem fragile(LoadProblem p) {
        List<CargoKind> kinds = new ArrayList<>();
        for (int k = 0; k < p.kinds().size(); k++) {
            kinds.add(k % 5 == 0 ? p.kinds().get(k).withTopLoad(0) : p.kinds().get(k));
        }
        return p.withKinds(kinds);
    }

    private static LoadProblem together(LoadProblem p) {
        List<CargoKind> kinds = new ArrayList<>();
        for (int k = 0; k < p.kinds().size(); k++) {
            kinds.add(p.kinds().get(k).inGroup("lot " + k / 2));
        }
        return p.withKinds(kinds);
    }

    /** Lengths taken as centimetres; from 100 to 300 kg for each m³ by chance. */
    private static LoadProblem weighed(SetProblem problem, int set) {
        LoadProblem plain = problem.with(Support.FULL).with(Practice.NONE);
        Dice dice = Dice.of(set, problem.number());
        return kinds(plain, k -> k.withMass(Math.rint(k.volume() * (100 + dice.below(201)) / 1e5) / 10));
    }

    String run() {
        Machine machine = new Machine();
        Table table = new Table("asked", "runs", "held", "volume, mean (%)", "loss (points)", "mass loaded, mean (kg)");
        double free = 0;
        for (Map.Entry<String, UnaryOperator<LoadProblem>> one : asked().entrySet()) {
            int runs = 0;
            int held = 0;
            double volume = 0;
            double mass = 0;
            for (int set : setting.classes()) {
                for (SetProblem problem : LoadRuns.read(set).problems()) {
                    if (problem.number() >= setting.from() && problem.number() <= setting.to()) {
                        LoadProblem asked = one.getValue().apply(weighed(problem, set));
                        LoadResult result = load(asked);
                        runs++;
                        held += result.faults().isEmpty() ? 1 : 0;
                        volume += 100 * result.share();
                        mass += result.load().massKg(asked.kinds());
                        if (setting.verbose()) {
                            System.err.printf(
                                    Locale.ROOT,
                                    "%s, %d %d: %.2f %s%n",
                                    one.getKey(),
                                    set,
                                    problem.number(),
                                    100 * result.share(),
                                    result.faults());
                        }
                    }
                }
            }
            free = one.getKey().equals("nothing") ? volume / runs : free;
            table.add(
                    one.getKey(),
                    runs,
                    held,
                    LoadRuns.hundredths(volume / runs),
                    LoadRuns.hundredths(free - volume / runs),
                    Math.round(mass / runs));
        }
        return """
                # What practice costs

                The single-container sets with full support, each piece given a mass of 100 to 300 kg for each m³ by chance, a
                limit of %s s (%s) on one thread, and one thing asked at a time. "Held" counts the loads in which a check from
                scratch finds nothing broken. A mass limit lowers the volume since less may go.

                %s
                Classes %s, problems %d to %d, seed %d. Date: %s.

                %s""".formatted(
                        setting.seconds().get(0),
                        setting.cpu() ? "processor time" : "wall-clock time",
                        machine.text(),
                        setting.classes(),
                        setting.from(),
                        setting.to(),
                        setting.seed(),
                        setting.date(),
                        table.text());
    }

    private LoadResult load(LoadProblem problem) {
        LongSupplier clock =
                setting.cpu() ? ManagementFactory.getThreadMXBean()::getCurrentThreadCpuTime : System::nanoTime;
        Duration time = Duration.ofNanos((long) (setting.seconds().get(0) * 1e9));
        return new StandardLoader(clock)
                .load(LoadRequest.single(problem, setting.seed(), Budget.time(time)), progress -> {}, new StopSignal());
    }
}
