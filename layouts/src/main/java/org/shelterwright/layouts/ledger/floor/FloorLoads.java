package org.shelterwright.layouts.ledger.floor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.Influence;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.MassModel;
import org.shelterwright.layouts.state.Quantity;

/**
 * The loads of the floor in each load state: on the road and on station, all tanks of the units full and all at their least. A
 * unit presses with its own mass and with all that stands on it or hangs under it; what hangs on walls or the roof does not press
 * on the floor.
 */
final class FloorLoads {
    /** Standard gravity (m/s²): 3rd CGPM, 1901. */
    static final double G = 9.80665;

    private final List<FloorCase> cases = new ArrayList<>();
    private final List<Gap> gaps;

    private FloorLoads(Scene scene) {
        gaps = LoadStates.of(scene).gaps(Quantity.ofBody(Influence.MOMENT_X));
        MassModel model = new MassModel(scene.rules());
        boolean moves = false;
        boolean tanks = false;
        for (PlacedUnit unit : scene.units()) {
            moves |= unit.placement().road() != null;
            tanks |= !unit.item().tanks().isEmpty();
        }
        addCases(scene, model, Situation.ON_THE_ROAD, tanks);
        if (moves) {
            addCases(scene, model, Situation.ON_STATION, tanks);
        }
    }

    static FloorLoads of(Scene scene) {
        return scene.derived(FloorLoads.class, FloorLoads::new);
    }

    List<FloorCase> cases() {
        return cases;
    }

    /** Figures that are missing for the loads. */
    List<Gap> gaps() {
        return gaps;
    }

    /** Sums of one unit and what it carries: mass, moments about x and y, and mass times the range of its centre. */
    private static final class Sums {
        private final double[] kg;
        private final double[] x;
        private final double[] y;
        private final double[] off;

        Sums(int units) {
            kg = new double[units];
            x = new double[units];
            y = new double[units];
            off = new double[units];
        }

        void add(int unit, double massKg, Point at, double range) {
            kg[unit] += massKg;
            x[unit] += massKg * Lengths.metres(at.x());
            y[unit] += massKg * Lengths.metres(at.y());
            off[unit] += massKg * range;
        }
    }

    private void addCases(Scene scene, MassModel model, Situation situation, boolean tanks) {
        List<PlacedUnit> units = scene.units();
        int[] roots = new int[units.size()];
        for (PlacedUnit unit : units) {
            roots[unit.index()] = root(scene, unit, situation);
        }
        FloorCase full = makeCase(units, model, situation, roots, true, tanks, null);
        cases.add(full);
        if (tanks) {
            cases.add(makeCase(units, model, situation, roots, false, true, full));
        }
    }

    /** The unit on the floor that carries a unit in the end; -1 if none does. */
    private static int root(Scene scene, PlacedUnit unit, Situation situation) {
        PlacedUnit at = unit;
        for (int steps = 0; steps <= scene.units().size(); steps++) {
            String host = at.place(situation).host();
            if (host == null) {
                return Footing.of(at, situation).patches().isEmpty() ? -1 : at.index();
            }
            PlacedUnit next = scene.unit(host).orElse(null);
            if (next == null) {
                return -1;
            }
            at = next;
        }
        return -1;
    }

    private static FloorCase makeCase(
            List<PlacedUnit> units,
            MassModel model,
            Situation situation,
            int[] roots,
            boolean full,
            boolean tellsTanks,
            @Nullable FloorCase sameShape) {
        Sums worst = new Sums(units.size());
        Sums nominal = new Sums(units.size());
        int patches = 0;
        for (PlacedUnit unit : units) {
            int root = roots[unit.index()];
            if (root >= 0) {
                add(unit, model, situation, root, full, worst, nominal);
            }
            patches += Footing.of(unit, situation).patches().size();
        }
        PlacedUnit[] owners = new PlacedUnit[patches];
        int[][] edges = new int[4][patches];
        double[][] loads = new double[3][patches];
        int at = 0;
        for (PlacedUnit unit : units) {
            Footing footing = Footing.of(unit, situation);
            PressurePlane plane = footing.plane();
            if (plane != null) {
                int i = unit.index();
                plane.loads(worst.kg[i], worst.x[i], worst.y[i], loads[0], at);
                plane.loads(nominal.kg[i], nominal.x[i], nominal.y[i], loads[1], at);
                for (int k = 0; k < plane.patches(); k++) {
                    Rect patch = footing.patches().get(k);
                    owners[at + k] = unit;
                    loads[2][at + k] = plane.perMetreOff(k) * worst.off[i];
                    edges[0][at + k] = patch.x0();
                    edges[1][at + k] = patch.x1();
                    edges[2][at + k] = patch.y0();
                    edges[3][at + k] = patch.y1();
                }
                at += plane.patches();
            }
        }
        String state = Wording.situation(situation) + (tellsTanks ? full ? ", tanks full" : ", tanks low" : "");
        return new FloorCase(
                owners,
                edges[0],
                edges[1],
                edges[2],
                edges[3],
                loads[0],
                loads[1],
                loads[2],
                sameShape == null ? order(edges[0], edges[1]) : sameShape.edgesX(),
                sameShape == null ? order(edges[2], edges[3]) : sameShape.edgesY(),
                state);
    }

    private static void add(
            PlacedUnit unit, MassModel model, Situation situation, int root, boolean full, Sums worst, Sums nominal) {
        Item item = unit.item();
        MassData data = item.mass();
        Pose pose = unit.pose(situation);
        Point centre = data.centre();
        if (data.massKg() != null && centre != null) {
            Point at = pose.apply(centre, item.size());
            double grown = model.grownKg(data).orElse(data.massKg());
            double range = data.centreUncertainty() == null ? 0 : Lengths.metres(data.centreUncertainty());
            worst.add(root, grown + model.uncertaintyKg(data).orElse(0), at, range);
            nominal.add(root, grown, at, range);
        }
        for (Tank tank : item.tanks()) {
            Point at = pose.apply(tank.centre(), item.size());
            double kg = full ? tank.fullKg() : tank.leastKg();
            worst.add(root, kg, at, 0);
            nominal.add(root, kg, at, 0);
        }
    }

    private static int[] order(int[] low, int[] high) {
        long[] keys = new long[2 * low.length];
        for (int k = 0; k < low.length; k++) {
            keys[2 * k] = ((long) low[k] << 32) | 2 * k;
            keys[2 * k + 1] = ((long) high[k] << 32) | (2 * k + 1);
        }
        Arrays.sort(keys);
        int[] order = new int[keys.length];
        for (int i = 0; i < keys.length; i++) {
            order[i] = (int) keys[i];
        }
        return order;
    }
}
