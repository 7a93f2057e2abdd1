package org.shelterwright.layouts.ledger.transport.way;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.Ramp;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Shape;
import org.shelterwright.layouts.transport.scene.Wheel;

/**
 * Vehicles pass the ramp over which they are driven onto a car: its slope with some play is below the angles at which they touch, see
 * {@link RampAngles}; it is wide enough; and its axle load is above that of the vehicle on the slope, where the lower axle bears
 * {@code m (a cos θ + h sin θ)/L}. Source: geometry and statics; the same mechanics as ISO 10392 (from memory).
 */
final class RampPasses extends LegLimit {
    RampPasses() {
        super(
                "ramp",
                "Ramp",
                Source.fromMemory("ISO 10392", "axle loads of an inclined vehicle; ramp angles by geometry"),
                "No vehicle is driven over a ramp on this leg.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        Ramp ramp = leg.leg().ramp();
        if (ramp == null) {
            return;
        }
        for (PlacedLoad load : leg.outerLoads()) {
            for (PlacedPiece piece : load.pieces()) {
                if (piece.shape().wheeled()) {
                    assess(leg, load, piece.shape(), ramp, rows);
                }
            }
        }
    }

    private void assess(LegScene leg, PlacedLoad load, Shape shape, Ramp ramp, Rows rows) {
        List<String> units = List.of(shape.id(), load.id());
        RampAngles angles = RampAngles.of(shape);
        double play = leg.rules().valueOr(Figure.BREAKOVER_PLAY, 0);
        rows.add(draft(leg, rows, "Ramp angle, " + shape.name())
                .units(units)
                .mend(ramp.degrees() + play > angles.least() ? "Lengthen the ramp, or lift it on." : null)
                .atMost(
                        ramp.degrees() + play,
                        angles.least(),
                        "°",
                        String.format(
                                Locale.ROOT,
                                "%s touches a ramp at %.1f° (%s); %s has %.1f°.",
                                shape.name(),
                                angles.least(),
                                angles.tightest(),
                                ramp.name(),
                                ramp.degrees())));
        Integer width = ramp.width();
        if (width != null) {
            rows.add(draft(leg, rows, "Ramp width, " + shape.name())
                    .units(units)
                    .atMost(
                            shape.size().y() / 1000.0,
                            width / 1000.0,
                            "mm",
                            shape.name() + " is " + Wording.mm(shape.size().y()) + " wide, the ramp "
                                    + Wording.mm(width) + "."));
        }
        rows.add(axle(
                leg,
                shape,
                ramp,
                draft(leg, rows, "Axle on the ramp, " + shape.name()).units(units)));
    }

    private Row axle(LegScene leg, Shape shape, Ramp ramp, RowDraft draft) {
        Double kg = axleKg(shape, ramp.degrees());
        Double limit = ramp.axleKg();
        if (limit == null) {
            return draft.notAssessed(
                    "The axle load of " + ramp.name() + " is not known. Give \"axleKg\" of the ramp of leg "
                            + leg.leg().id() + ".");
        }
        if (kg == null) {
            return draft.notAssessed(shape.unknown().orElse("The axle loads of " + shape.name() + " cannot be told."));
        }
        return draft.mend(kg > limit ? "Take a stronger ramp, or lift it on." : null)
                .atMost(
                        kg,
                        limit,
                        "kg",
                        "On the slope the lower axle of " + shape.name() + " bears " + Amounts.kg(kg) + "; "
                                + ramp.name() + " takes " + Amounts.kg(limit) + ".");
    }

    /**
     * The greatest axle load on a slope, either end up (kg); {@code null} if it cannot be told. What the slope shifts, {@code m h
     * sin θ / L}, is shared by the axles of the lower end as they share their load; the support or coupling of a trailer is an end.
     */
    static @Nullable Double axleKg(Shape shape, double degrees) {
        Point centre = shape.centre();
        Double massKg = shape.massKg();
        if (centre == null || massKg == null) {
            return null;
        }
        List<Wheel> rear =
                shape.wheels().stream().filter(one -> one.x() <= centre.x()).toList();
        List<Wheel> front =
                shape.wheels().stream().filter(one -> one.x() > centre.x()).toList();
        double rearKg = loadKg(rear);
        double frontKg = loadKg(front);
        if (rearKg <= 0 || frontKg <= 0) {
            return null;
        }
        double radians = Math.toRadians(degrees);
        double shiftedKg =
                shape.mostKg() * centre.z() * Math.sin(radians) / (middle(front, frontKg) - middle(rear, rearKg));
        double most = 0;
        for (Wheel wheel : shape.wheels()) {
            double endKg = rear.contains(wheel) ? rearKg : frontKg;
            if (!wheel.support()) {
                most = Math.max(most, shape.mostKg(wheel) * Math.cos(radians) + wheel.loadKg() / endKg * shiftedKg);
            }
        }
        return most;
    }

    private static double loadKg(List<Wheel> wheels) {
        return wheels.stream().mapToDouble(Wheel::loadKg).sum();
    }

    /** Where a load bears on some wheels together (µm). */
    private static double middle(List<Wheel> wheels, double kg) {
        return wheels.stream().mapToDouble(one -> one.loadKg() * one.x()).sum() / kg;
    }
}
