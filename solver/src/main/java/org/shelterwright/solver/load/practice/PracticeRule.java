package org.shelterwright.solver.load.practice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.shelterwright.solver.load.block.Block;
import org.shelterwright.solver.load.block.BlockTable;
import org.shelterwright.solver.load.model.Apart;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.packing.Packing;
import org.shelterwright.solver.load.packing.PutRule;

/** All that practice asks, for one thread. Every block holds pieces of one stop, one class and one group. */
public final class PracticeRule implements PutRule {
    private static final double UNBALANCED = 0.03;

    private final LoadProblem problem;
    private final double[] blockMassKg;
    private final int[] stops;
    private final boolean byStops;
    private final Balance balance;
    private final Moments moments;
    private final List<List<Integer>> groups = new ArrayList<>();

    /** The rule of a problem; {@link PutRule#FREE} if it asks for nothing. */
    public static PutRule of(BlockTable table) {
        LoadProblem problem = table.problem();
        boolean free = !problem.practice().weighs()
                && problem.practice().apart().isEmpty()
                && !problem.practice().byStops()
                && !problem.stackingLimited()
                && problem.kinds().stream().allMatch(kind -> kind.together() == null);
        return free ? FREE : new PracticeRule(table);
    }

    /** Whether pieces of two kinds may stand in one block. */
    public static boolean mix(LoadProblem problem, CargoKind one, CargoKind other) {
        return (!problem.practice().byStops() || one.stop() == other.stop())
                && java.util.Objects.equals(one.together(), other.together())
                && java.util.Objects.equals(one.segregation(), other.segregation());
    }

    private PracticeRule(BlockTable table) {
        problem = table.problem();
        blockMassKg = new double[table.size()];
        for (int b = 0; b < blockMassKg.length; b++) {
            Block block = table.block(b);
            for (int i = 0; i < block.kinds().length; i++) {
                blockMassKg[b] += block.counts()[i]
                        * problem.kinds().get(block.kinds()[i]).massKg();
            }
        }
        byStops = problem.practice().byStops();
        TreeSet<Integer> numbers = new TreeSet<>();
        problem.kinds().forEach(kind -> numbers.add(kind.stop()));
        stops = numbers.descendingSet().stream().mapToInt(Integer::intValue).toArray();
        balance = new Balance(problem);
        moments = new Moments(problem);
        Map<String, List<Integer>> named = new HashMap<>();
        for (int k = 0; k < problem.kinds().size(); k++) {
            String name = problem.kinds().get(k).together();
            if (name != null) {
                List<Integer> group = named.get(name);
                if (group == null) {
                    group = new ArrayList<>();
                    named.put(name, group);
                    groups.add(group);
                }
                group.add(k);
            }
        }
    }

    @Override
    public boolean allows(Packing packing, int b, int x, int y, int z, boolean mirrorX, boolean mirrorY) {
        CargoKind kind = kind(packing, b);
        if (byStops && kind.stop() != stops[Math.min(packing.phase(), stops.length - 1)]) {
            return false;
        }
        return massHolds(packing, b)
                && apart(packing, b, kind, x, y)
                && (!byStops || clear(packing, b, kind.stop(), x, y, z))
                && packing.bears(b, x, y, z, mirrorX, mirrorY);
    }

    private CargoKind kind(Packing packing, int b) {
        return problem.kinds().get(packing.table().block(b).kinds()[0]);
    }

    private boolean massHolds(Packing packing, int b) {
        double limit = problem.practice().massLimitKg();
        return limit == Double.POSITIVE_INFINITY || massKg(packing) + blockMassKg[b] <= limit;
    }

    private double massKg(Packing packing) {
        double sum = 0;
        for (int i = 0; i < packing.size(); i++) {
            sum += blockMassKg[packing.block(i)];
        }
        return sum;
    }

    private boolean apart(Packing packing, int b, CargoKind kind, int x, int y) {
        Block block = packing.table().block(b);
        for (Apart rule : problem.practice().apart()) {
            String other = rule.one().equals(kind.segregation())
                    ? rule.other()
                    : rule.other().equals(kind.segregation()) ? rule.one() : null;
            for (int i = 0; other != null && i < packing.size(); i++) {
                if (other.equals(kind(packing, packing.block(i)).segregation())) {
                    Block placed = packing.table().block(packing.block(i));
                    int gapX = Math.max(packing.x(i) - x - block.dx(), x - packing.x(i) - placed.dx());
                    int gapY = Math.max(packing.y(i) - y - block.dy(), y - packing.y(i) - placed.dy());
                    if (Math.max(gapX, gapY) < rule.distance()) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** Whether neither the block would be in the way of earlier stops, nor later stops in its own. */
    private boolean clear(Packing packing, int b, int stop, int x, int y, int z) {
        Block block = packing.table().block(b);
        for (int i = 0; i < packing.size(); i++) {
            int other = kind(packing, packing.block(i)).stop();
            if (other != stop) {
                Block placed = packing.table().block(packing.block(i));
                int px = packing.x(i);
                int py = packing.y(i);
                int pz = packing.z(i);
                boolean hinders = other < stop
                        ? hinders(x, y, z, block, px, py, pz, placed)
                        : hinders(px, py, pz, placed, x, y, z, block);
                if (hinders) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether the first, which leaves later, stands before or upon the second. */
    private static boolean hinders(int ax, int ay, int az, Block a, int bx, int by, int bz, Block b) {
        boolean across = ay < by + b.dy() && by < ay + a.dy();
        boolean along = ax < bx + b.dx() && bx < ax + a.dx();
        boolean level = az < bz + b.dz() && bz < az + a.dz();
        return across && ((level && ax >= bx + b.dx()) || (along && az >= bz + b.dz()));
    }

    @Override
    public double worth(Packing packing) {
        double worth = packing.value();
        for (List<Integer> group : groups) {
            boolean whole = group.stream().allMatch(k -> packing.left(k) == 0);
            for (int k : group) {
                CargoKind kind = problem.kinds().get(k);
                worth -= whole ? 0 : (kind.count() - packing.left(k)) * kind.volume() * kind.worth();
            }
        }
        if (balance.asked() && packing.size() > 0) {
            double broken = balance.best(moments.of(packing)).broken();
            worth -= broken > 0 ? problem.roomVolume() * (UNBALANCED + broken) : 0;
        }
        return worth;
    }

    @Override
    public boolean goOn(Packing packing) {
        if (!byStops || packing.phase() >= stops.length - 1) {
            return false;
        }
        packing.nextPhase();
        return true;
    }
}
