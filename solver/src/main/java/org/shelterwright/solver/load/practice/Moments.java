package org.shelterwright.solver.load.practice;

import java.util.Arrays;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.solver.load.block.Block;
import org.shelterwright.solver.load.block.BlockTable;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.packing.Packing;

/** Mass and its first moments in each state of unloading, and the extent of a load. Not for several threads. */
final class Moments {
    private final CargoKind[] kinds;
    private final double[] mass;
    private final double[] along;
    private final double[] across;
    private int lowX;
    private int highX;
    private int lowY;
    private int highY;

    Moments(LoadProblem problem) {
        kinds = problem.kinds().toArray(new CargoKind[0]);
        int stops = problem.practice().byStops()
                ? problem.kinds().stream().mapToInt(CargoKind::stop).max().orElse(1)
                : 1;
        mass = new double[stops];
        along = new double[stops];
        across = new double[stops];
    }

    private void clear() {
        Arrays.fill(mass, 0);
        Arrays.fill(along, 0);
        Arrays.fill(across, 0);
        lowX = Integer.MAX_VALUE;
        lowY = Integer.MAX_VALUE;
        highX = Integer.MIN_VALUE;
        highY = Integer.MIN_VALUE;
    }

    /** Takes the moments of a load while it is built. */
    Moments of(Packing packing) {
        clear();
        BlockTable table = packing.table();
        for (int i = 0; i < packing.size(); i++) {
            Block block = table.block(packing.block(i));
            int[] parts = block.parts();
            int x = packing.x(i);
            int y = packing.y(i);
            for (int p = 0; p < parts.length; p += 7) {
                double px = parts[p + 1] + parts[p + 4] / 2.0;
                double py = parts[p + 2] + parts[p + 5] / 2.0;
                add(
                        parts[p],
                        x + (packing.mirrorX(i) ? block.dx() - px : px),
                        y + (packing.mirrorY(i) ? block.dy() - py : py));
            }
            extend(x, y, x + block.dx(), y + block.dy());
        }
        return this;
    }

    /** Takes the moments of a load. */
    Moments of(Load load) {
        clear();
        for (Stowed one : load.stowed()) {
            Box box = one.box();
            add(one.kind(), (box.x0() + box.x1()) / 2.0, (box.y0() + box.y1()) / 2.0);
            extend(box.x0(), box.y0(), box.x1(), box.y1());
        }
        return this;
    }

    /** What leaves at a stop is on board in the states before it. */
    private void add(int kind, double x, double y) {
        double kg = kinds[kind].massKg();
        int states = mass.length == 1 ? 1 : kinds[kind].stop();
        for (int state = 0; state < states; state++) {
            mass[state] += kg;
            along[state] += kg * x;
            across[state] += kg * y;
        }
    }

    private void extend(int x0, int y0, int x1, int y1) {
        lowX = Math.min(lowX, x0);
        lowY = Math.min(lowY, y0);
        highX = Math.max(highX, x1);
        highY = Math.max(highY, y1);
    }

    int states() {
        return mass.length;
    }

    double mass(int state) {
        return mass[state];
    }

    double along(int state) {
        return along[state];
    }

    double across(int state) {
        return across[state];
    }

    int lowX() {
        return lowX;
    }

    int highX() {
        return highX;
    }

    int lowY() {
        return lowY;
    }

    int highY() {
        return highY;
    }
}
