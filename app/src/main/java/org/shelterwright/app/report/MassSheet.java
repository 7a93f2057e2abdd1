package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.view.UnitNumbers;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * The masses of a filled body in one situation, line by line, tanks full. The datum is the inside rear right floor corner.
 */
record MassSheet(Situation situation, List<MassLine> lines) {

    private static final char NO_SOURCE = ' ';

    MassSheet {
        lines = List.copyOf(lines);
    }

    /**
     * A sum of lines; lines with something missing do not count.
     *
     * @param missing number of lines that do not count
     */
    record Total(String name, double massKg, double mx, double my, double mz, int missing) {

        /** Its centre (m); empty if there is no mass. */
        Optional<double[]> centreM() {
            return massKg > 0 ? Optional.of(new double[] {mx / massKg, my / massKg, mz / massKg}) : Optional.empty();
        }
    }

    static MassSheet of(Scene scene, Situation situation) {
        MassModel model = new MassModel(scene.rules());
        Map<String, Integer> numbers = UnitNumbers.of(scene);
        List<MassLine> lines = new ArrayList<>();
        MassData tare = scene.body().tare();
        lines.add(line(model, "", scene.body().name() + ", empty", "body", tare, tare.centre()));
        for (PlacedUnit unit : scene.units()) {
            Item item = unit.item();
            Point centre = item.mass().centre();
            Point arm = centre == null ? null : unit.pose(situation).apply(centre, item.size());
            String reference = Integer.toString(numbers.getOrDefault(unit.id(), 0));
            lines.add(line(model, reference, unit.name(), unit.spec().group(), item.mass(), arm));
            for (Tank tank : item.tanks()) {
                Point at = unit.pose(situation).apply(tank.centre(), item.size());
                double full = tank.fullKg();
                lines.add(new MassLine(
                        reference,
                        unit.name() + ": " + tank.name() + ", full",
                        "contents",
                        full,
                        NO_SOURCE,
                        0.0,
                        null,
                        full,
                        at));
            }
        }
        return new MassSheet(situation, lines);
    }

    /** The sum of each group, in the order of first use. */
    List<Total> subtotals() {
        Map<String, List<MassLine>> groups = new LinkedHashMap<>();
        lines.forEach(line ->
                groups.computeIfAbsent(line.group(), name -> new ArrayList<>()).add(line));
        List<Total> totals = new ArrayList<>();
        groups.forEach((name, members) -> totals.add(sum(name, members)));
        return totals;
    }

    Total total() {
        return sum("filled body", lines);
    }

    private static Total sum(String name, List<MassLine> lines) {
        double mass = 0;
        double[] sums = new double[3];
        int missing = 0;
        for (MassLine line : lines) {
            Double grown = line.grownKg();
            double[] moments = line.momentsKgM();
            if (grown == null || moments == null) {
                missing++;
                continue;
            }
            mass += grown;
            for (int i = 0; i < 3; i++) {
                sums[i] += moments[i];
            }
        }
        return new Total(name, mass, sums[0], sums[1], sums[2], missing);
    }

    private static MassLine line(
            MassModel model, String reference, String name, String group, MassData data, @Nullable Point arm) {
        return new MassLine(
                reference,
                name,
                group,
                data.massKg(),
                data.basis().letter(),
                value(model.growthShare(data)),
                value(model.uncertaintyKg(data)),
                value(model.grownKg(data)),
                arm);
    }

    private static @Nullable Double value(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
