package org.shelterwright.layouts.asbuilt;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.asbuilt.Weighing.Other;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * What the layout says that the scales should read: the empty body, all placed units on station with their tanks at the least
 * filling, with what is in them, and what else stood on the scales. Masses with growth; ranges of masses are taken to be independent.
 *
 * @param parts everything that has a known mass and centre
 * @param missing what has none, in words
 */
public record Prediction(List<Part> parts, List<String> missing) {
    /**
     * A thing with mass.
     *
     * @param unit its unit; {@code null} if it is none
     */
    public record Part(
            String name, @Nullable PlacedUnit unit, double kg, double rangeKg, double xM, double yM, double zM) {}

    public Prediction {
        parts = List.copyOf(parts);
        missing = List.copyOf(missing);
    }

    /** The prediction for a weighing. */
    public static Prediction of(Scene scene, Weighing weighing) {
        MassModel model = new MassModel(scene.rules());
        List<Part> parts = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        MassData tare = scene.body().tare();
        add(model, "the empty body", null, tare, tare.centre(), parts, missing);
        for (PlacedUnit unit : scene.units()) {
            MassData mass = unit.mass(Situation.ON_STATION);
            Point centre = mass.centre();
            Point at = centre == null
                    ? null
                    : unit.pose(Situation.ON_STATION).apply(centre, unit.item().size());
            add(model, unit.name(), unit, mass, at, parts, missing);
            for (Tank tank : unit.item().tanks()) {
                Point in = unit.pose(Situation.ON_STATION)
                        .apply(tank.centre(), unit.item().size());
                parts.add(part(unit.name() + ", " + tank.name(), null, tank.leastKg(), 0, in));
            }
        }
        for (Other other : weighing.others()) {
            parts.add(part(
                    other.name(),
                    null,
                    other.massKg(),
                    other.uncertaintyKg(),
                    new Point(other.x(), other.y(), other.z())));
        }
        return new Prediction(parts, missing);
    }

    private static void add(
            MassModel model,
            String name,
            @Nullable PlacedUnit unit,
            MassData data,
            @Nullable Point at,
            List<Part> parts,
            List<String> missing) {
        OptionalDouble kg = model.grownKg(data);
        OptionalDouble range = model.uncertaintyKg(data);
        if (kg.isEmpty() || range.isEmpty() || at == null) {
            missing.add("mass, centre, growth or uncertainty of " + name);
        } else {
            parts.add(part(name, unit, kg.getAsDouble(), range.getAsDouble(), at));
        }
    }

    private static Part part(String name, @Nullable PlacedUnit unit, double kg, double range, Point at) {
        return new Part(name, unit, kg, range, at.x() * 1e-6, at.y() * 1e-6, at.z() * 1e-6);
    }

    /** Mass and centre of all parts. */
    public Balance balance() {
        double kg = parts.stream().mapToDouble(Part::kg).sum();
        double x = parts.stream().mapToDouble(one -> one.kg() * one.xM()).sum() / kg;
        double y = parts.stream().mapToDouble(one -> one.kg() * one.yM()).sum() / kg;
        double z = parts.stream().mapToDouble(one -> one.kg() * one.zM()).sum() / kg;
        double range = 0;
        double xRange = 0;
        double yRange = 0;
        double zRange = 0;
        for (Part one : parts) {
            range += square(one.rangeKg());
            xRange += square((one.xM() - x) / kg * one.rangeKg());
            yRange += square((one.yM() - y) / kg * one.rangeKg());
            zRange += square((one.zM() - z) / kg * one.rangeKg());
        }
        return new Balance(kg, Math.sqrt(range), x, Math.sqrt(xRange), y, Math.sqrt(yRange), z, Math.sqrt(zRange));
    }

    private static double square(double value) {
        return value * value;
    }
}
