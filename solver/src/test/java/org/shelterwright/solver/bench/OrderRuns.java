package org.shelterwright.solver.bench;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.order.FoundOrder;
import org.shelterwright.solver.order.OrderFinder;
import org.shelterwright.solver.order.Stuck;
import org.shelterwright.solver.order.planted.PlantedOrder;

/** The search for an order of bringing in, in bodies that were filled in a known one. */
final class OrderRuns {
    private static final int[] UNITS = {8, 20, 40, 60};
    private static final int CASES = 75;
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
        for (int units : UNITS) {
            add(table, units);
        }
        return """
                # Order of bringing in

                Bodies that were filled one unit after the other through a door of 900 mm: straight in along the lane of the
                door, then to one side, up or down until the unit touches; a third of the units are of two cuboids, a third on
                single micrometres. Every fifth case holds two linked rings besides, which no order brings in: it is refused
                rightly if just these are named, each as what blocks the other. Times are wall clock of one thread, for the
                whole search: taking out, choice among orders by a beam of 12, reasons. The target is 2 s, the aim 0.2 s,
                for 60 units.

                %s
                Date: %s.

                %s""".formatted(machine.text(), setting.date(), table.text());
    }

    private void add(Table table, int units) {
        List<Double> times = new ArrayList<>();
        List<Double> greedy = new ArrayList<>();
        int possible = 0;
        int solved = 0;
        int refused = 0;
        int rightly = 0;
        long asked = 0;
        for (int i = 0; i < CASES && System.nanoTime() < setting.endNanos(); i++) {
            boolean impossible = i % EVERY == EVERY - 1;
            PlantedOrder planted = PlantedOrder.of(setting.seed() + i, units, impossible);
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
            solved += !impossible && found.complete() ? 1 : 0;
            rightly += impossible && right(planted, found) ? 1 : 0;
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
        List<String> stuck = found.stuck().stream().map(Stuck::unit).sorted().toList();
        return stuck.equals(planted.rings())
                && found.stuck().stream()
                        .allMatch(one ->
                                one.blockers().size() == 1 && planted.rings().containsAll(one.blockers()));
    }
}
