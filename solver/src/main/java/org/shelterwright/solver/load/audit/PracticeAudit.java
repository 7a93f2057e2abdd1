package org.shelterwright.solver.load.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.solver.load.model.Apart;
import org.shelterwright.solver.load.model.BalanceLine;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Practice;
import org.shelterwright.solver.load.model.Stowed;

/** Checks what practice asks of a load that stands. */
final class PracticeAudit {
    private static final double ROUNDING = 1e-6;

    private final LoadProblem problem;
    private final Practice practice;
    private final List<Stowed> stowed;
    private final List<String> faults = new ArrayList<>();

    PracticeAudit(LoadProblem problem, Load load) {
        this.problem = problem;
        this.practice = problem.practice();
        this.stowed = load.stowed();
    }

    List<String> faults() {
        mass();
        balance();
        stacking();
        door();
        apart();
        together();
        pinned();
        if (practice.byStops()) {
            stops();
        }
        return faults;
    }

    private CargoKind kind(Stowed one) {
        return problem.kinds().get(one.kind());
    }

    private void mass() {
        if (practice.massLimitKg() < Double.POSITIVE_INFINITY) {
            double mass = stowed.stream().mapToDouble(one -> kind(one).massKg()).sum();
            if (mass > practice.massLimitKg() * (1 + ROUNDING)) {
                faults.add(String.format(
                        Locale.ROOT,
                        "The load of %.1f kg is above the limit of %.1f kg.",
                        mass,
                        practice.massLimitKg()));
            }
        }
    }

    private void balance() {
        int last = practice.byStops()
                ? problem.kinds().stream().mapToInt(CargoKind::stop).max().orElse(1)
                : 1;
        for (int stop = 1; stop <= last; stop++) {
            double mass = 0;
            double along = 0;
            double across = 0;
            for (Stowed one : stowed) {
                if (last == 1 || kind(one).stop() >= stop) {
                    double kg = kind(one).massKg();
                    mass += kg;
                    along += kg * (one.box().x0() + (one.box().x1() - one.box().x0()) / 2.0);
                    across += kg * (one.box().y0() + (one.box().y1() - one.box().y0()) / 2.0);
                }
            }
            for (BalanceLine line : practice.balance()) {
                double value = line.value(mass, along, across);
                if (mass > 0 && value > ROUNDING * line.scaleKg()) {
                    faults.add("Before stop " + stop + ": " + line.name() + " does not hold.");
                }
            }
        }
    }

    /** From the highest piece down, each hands its mass and what rests on it to what bears it. */
    private void stacking() {
        if (!problem.kinds().stream().allMatch(kind -> kind.topLoadKg() == Double.POSITIVE_INFINITY)) {
            Integer[] order = new Integer[stowed.size()];
            java.util.Arrays.setAll(order, i -> i);
            java.util.Arrays.sort(
                    order,
                    (a, b) -> Integer.compare(
                            stowed.get(b).box().z0(), stowed.get(a).box().z0()));
            double[] load = new double[stowed.size()];
            for (int i : order) {
                Box upper = stowed.get(i).box();
                double massKg = kind(stowed.get(i)).massKg();
                double kg = load[i] + (Double.isNaN(massKg) ? 1 : massKg);
                double base = (double) (upper.x1() - upper.x0()) * (upper.y1() - upper.y0());
                for (int j = 0; j < load.length; j++) {
                    if (stowed.get(j).box().z1() == upper.z0()) {
                        load[j] += kg * LoadAudit.areaOn(upper, stowed.get(j).box()) / base;
                    }
                }
            }
            for (int i = 0; i < load.length; i++) {
                CargoKind kind = kind(stowed.get(i));
                if (load[i] > kind.topLoadKg() * (1 + ROUNDING)) {
                    faults.add(String.format(
                            Locale.ROOT,
                            "On piece %d (%s) rest %.1f kg; it bears %.1f kg.",
                            i + 1,
                            kind.name(),
                            load[i],
                            kind.topLoadKg()));
                }
            }
        }
    }

    private void door() {
        Practice.Door door = practice.door();
        for (int i = 0; door != null && i < stowed.size(); i++) {
            Box box = stowed.get(i).box();
            if (box.z1() - box.z0() > door.height()
                    || Math.min(box.x1() - box.x0(), box.y1() - box.y0()) > door.width()) {
                faults.add("Piece " + (i + 1) + " does not pass the door as it stands.");
            }
        }
    }

    private void apart() {
        for (Apart rule : practice.apart()) {
            for (Stowed one : stowed) {
                for (Stowed other : stowed) {
                    if (rule.one().equals(kind(one).segregation())
                            && rule.other().equals(kind(other).segregation())
                            && near(one.box(), other.box(), rule.distance())) {
                        faults.add(kind(one).name() + " and " + kind(other).name() + " are too near each other.");
                    }
                }
            }
        }
    }

    private static boolean near(Box a, Box b, int distance) {
        int along = Math.max(a.x0() - b.x1(), b.x0() - a.x1());
        int across = Math.max(a.y0() - b.y1(), b.y0() - a.y1());
        return along < distance && across < distance;
    }

    private void together() {
        for (CargoKind kind : problem.kinds()) {
            String group = kind.together();
            if (group != null) {
                long all = problem.kinds().stream()
                        .filter(one -> group.equals(one.together()))
                        .mapToInt(CargoKind::count)
                        .sum();
                long in = stowed.stream()
                        .filter(one -> group.equals(kind(one).together()))
                        .count();
                if (in != 0 && in != all) {
                    faults.add(in + " of the " + all + " pieces of " + group + " are loaded, but they go together.");
                }
            }
        }
    }

    private void pinned() {
        for (Stowed one : practice.pinned()) {
            if (!stowed.contains(one)) {
                faults.add("A pinned piece of " + kind(one).name() + " is not in its place.");
            }
        }
    }

    /** Takes out stop after stop whatever has nothing on it and nothing before it; what cannot come out is told. */
    private void stops() {
        List<Stowed> in = new ArrayList<>(stowed);
        int last = problem.kinds().stream().mapToInt(CargoKind::stop).max().orElse(1);
        for (int stop = 1; stop <= last; stop++) {
            int due = stop;
            while (in.removeIf(one -> kind(one).stop() == due
                    && in.stream().noneMatch(other -> !other.equals(one) && blocks(other.box(), one.box())))) {
                // Taking one out may free the next.
            }
            long stuck = in.stream().filter(one -> kind(one).stop() == due).count();
            if (stuck > 0) {
                faults.add(stuck + " pieces cannot come out at stop " + stop + ".");
                return;
            }
        }
    }

    private static boolean blocks(Box other, Box one) {
        boolean across = other.y0() < one.y1() && one.y0() < other.y1();
        boolean along = other.x0() < one.x1() && one.x0() < other.x1();
        boolean level = other.z0() < one.z1() && one.z0() < other.z1();
        return across && ((along && other.z0() >= one.z1()) || (level && other.x0() >= one.x1()));
    }
}
