package org.shelterwright.solver.bench;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.order.FoundOrder;
import org.shelterwright.solver.order.OrderFinder;
import org.shelterwright.solver.order.Stuck;
import org.shelterwright.solver.order.planted.FoundOrderTruth;
import org.shelterwright.solver.order.planted.PlantedOrder;
import org.shelterwright.solver.order.planted.PlantedOrder.Rings;

/** The search for an order of bringing in, in bodies that were filled in a known one. */
final class OrderRuns {
    private static final int[] UNITS = {8, 20, 60};
    private static final int[] GROWTH = {10, 40, 80};
    private static final int CASES = 100;
    private static final int GROWTH_CASES = 20;
    private static final int EVERY = 5;

    private final Setting setting;

    OrderRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        Table table = new Table(
                "units",
                "cases",
                "possible, solved",
                "impossible, refused rightly",
                "median (ms)",
                "95 of 100 (ms)",
                "worst (ms)",
                "ways looked for, mean",
                "greedy only, median (ms)");
        for (int warm = 0; warm < 20; warm++) {
            new OrderFinder().find(PlantedOrder.of(1000 + warm, 20, false).scene(), List.of(), 1);
        }
        long end = setting.endNanos();
        for (int units : UNITS) {
            add(table, units, CASES, end);
        }
        for (int units : GROWTH) {
            add(table, units, GROWTH_CASES, end);
        }
        return """
                # Order of bringing in

                Bodies that were filled one unit after the other through a door of 900 mm: straight in along the lane of the
                door, then to one side, up or down until the unit touches; a third of the units are of two cuboids, a third on
                single micrometres. In every fifth case two linked rings are planted besides, which no order brings in: by
                turns at the far end, before all others, and behind the door, after them, where they shut others in.

                A case counts as solved if all comes in, and as refused rightly if the rings are among what is stuck; each
                only if ways that are asked afresh bear it out: every unit of the order comes in past those before it; every
                stuck one is stuck past the others that are; with its blockers gone it comes out, and with any one of them
                back it does not.

                Times are wall clock of one thread, for the whole search: taking out, choice among orders by a beam of 12,
                reasons, blockers. The target is 2 s, the aim 0.2 s, for 60 units. The first three rows are the cases, the
                others show the growth.

                %s
                Date: %s.

                %s""".formatted(machine.text(), setting.date(), table.text());
    }

    private void add(Table table, int units, int cases, long end) {
        List<Double> times = new ArrayList<>();
        List<Double> greedy = new ArrayList<>();
        int possible = 0;
        int solved = 0;
        int refused = 0;
        int rightly = 0;
        long asked = 0;
        for (int i = 0; i < cases && (i < EVERY || System.nanoTime() < end); i++) {
            boolean impossible = i % EVERY == EVERY - 1;
            Rings rings = !impossible ? Rings.NONE : i / EVERY % 2 == 0 ? Rings.FAR : Rings.BEHIND_THE_DOOR;
            PlantedOrder planted = PlantedOrder.of(setting.seed() + i, units, rings);
            Scene scene = planted.scene();
            long start = System.nanoTime();
            FoundOrder found = new OrderFinder().find(scene, List.of(), 1);
            times.add((System.nanoTime() - start) / 1e6);
            Scene again = planted.scene();
            start = System.nanoTime();
            new OrderFinder(1).find(again, List.of(), 1);
            greedy.add((System.nanoTime() - start) / 1e6);
            asked += found.asked();
            possible += impossible ? 0 : 1;
            refused += impossible ? 1 : 0;
            List<String> faults = FoundOrderTruth.faults(scene, found);
            long seed = setting.seed() + i;
            faults.forEach(fault -> System.err.println(units + " units, seed " + seed + ": " + fault));
            solved += !impossible && found.complete() && faults.isEmpty() ? 1 : 0;
            rightly += impossible && right(planted, found) && faults.isEmpty() ? 1 : 0;
        }
        times.sort(null);
        greedy.sort(null);
        table.add(
                units,
                times.size(),
                solved + " of " + possible,
                rightly + " of " + refused,
                times.get(times.size() / 2),
                times.get(times.size() * 95 / 100),
                times.get(times.size() - 1),
                asked / (double) times.size(),
                greedy.get(greedy.size() / 2));
    }

    private static boolean right(PlantedOrder planted, FoundOrder found) {
        return found.stuck().stream().map(Stuck::unit).toList().containsAll(planted.rings());
    }
}
