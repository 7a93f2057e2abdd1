package org.shelterwright.layouts.ledger.boltdown;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.body.Provision.Use;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * While bolting down, the centre of mass of body and units stays between the four stands under its pads, or under its lowest
 * fittings if it states no pads: at every step {@code |x − x₀| ≤ a/2} and {@code |y − y₀| ≤ b/2}, with the middle of the fittings (x₀, y₀) and their
 * distances a and b. The row shows the step and axis that use most.
 */
final class OnStands extends NamedLimit implements Limit.AtRest {
    OnStands() {
        super(
                "boltdown.stands",
                Subject.BOLT_DOWN,
                "Balance on stands",
                Severity.MEDIUM,
                Source.commonPractice("The centre of mass stays over the base on which the body stands"),
                "The body states no pads for stands and no four lowest fittings to stand on, or there is no order.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Sequence> sequence = Sequence.of(scene);
        List<Point> pads = places(scene, Set.of(Use.STAND));
        Optional<Box> base = base(pads.isEmpty() ? places(scene, Set.of(Use.TIE_DOWN, Use.BOTH)) : pads);
        if (sequence.isEmpty() || pads.isEmpty() && base.isEmpty()) {
            return;
        }
        if (base.isEmpty()) {
            rows.add(rows.draft(this)
                    .mend("Give four pads for stands in body " + scene.body().id() + ".")
                    .notAssessed("The pads for stands are not four at the corners of a level rectangle."));
            return;
        }
        MassModel model = new MassModel(scene.rules());
        double[] sum = new double[3];
        if (!add(model, scene.body().tare(), scene.body().tare().centre(), sum)) {
            rows.add(rows.draft(this)
                    .mend("Enter it in the body.")
                    .notAssessed("The mass of the empty body is not known."));
            return;
        }
        Worst worst = worse(null, sum, base.get(), "empty");
        for (PlacedUnit unit : sequence.get().units()) {
            MassData mass = unit.mass(Situation.ON_STATION);
            Point centre = mass.centre();
            Point at = centre == null
                    ? null
                    : unit.pose(Situation.ON_STATION).apply(centre, unit.item().size());
            if (!add(model, mass, at, sum)) {
                rows.add(rows.draft(this)
                        .units(unit)
                        .mend("Enter it in the item.")
                        .notAssessed("The mass or centre of " + unit.name() + " is not known."));
                return;
            }
            worst = worse(worst, sum, base.get(), "after " + unit.name());
        }
        rows.add(rows.draft(this)
                .state(worst.when())
                .mend(worst.off() > worst.half() ? "Change the order, or prop the body." : null)
                .atMost(
                        1000 * worst.off(),
                        1000 * worst.half(),
                        "mm",
                        "At worst the centre of mass lies " + Amounts.mm(worst.off()) + " " + worst.axis()
                                + " the middle of the stands (" + worst.when() + "); they reach "
                                + Amounts.mm(worst.half())
                                + "."));
    }

    private record Worst(double off, double half, String axis, String when) {
        double use() {
            return off / half;
        }
    }

    private static Worst worse(@Nullable Worst worst, double[] sum, Box base, String when) {
        double x = Math.abs(sum[1] / sum[0] - (base.x0() + base.x1()) * 0.5e-6);
        double y = Math.abs(sum[2] / sum[0] - (base.y0() + base.y1()) * 0.5e-6);
        Worst along = new Worst(x, (base.x1() - base.x0()) * 0.5e-6, "before or behind", when);
        Worst across = new Worst(y, (base.y1() - base.y0()) * 0.5e-6, "beside", when);
        Worst now = along.use() >= across.use() ? along : across;
        return worst == null || now.use() > worst.use() + 1e-12 ? now : worst;
    }

    private static boolean add(MassModel model, MassData data, @Nullable Point at, double[] sum) {
        OptionalDouble kg = model.grownKg(data);
        if (kg.isEmpty() || at == null) {
            return false;
        }
        sum[0] += kg.getAsDouble();
        sum[1] += kg.getAsDouble() * at.x() * 1e-6;
        sum[2] += kg.getAsDouble() * at.y() * 1e-6;
        return sum[0] > 0;
    }

    /** The rectangle of the lowest feet, if there is one at each of its corners. */
    private static Optional<Box> base(List<Point> all) {
        int lowest = all.stream().mapToInt(Point::z).min().orElse(0);
        List<Point> feet = all.stream().filter(at -> at.z() == lowest).toList();
        return feet.stream()
                .map(at -> Box.between(at, at))
                .reduce(Box::hull)
                .filter(base -> base.x0() < base.x1() && base.y0() < base.y1())
                .filter(base -> feet.containsAll(List.of(
                        base.low(),
                        base.low().with(Axis.X, base.x1()),
                        base.low().with(Axis.Y, base.y1()),
                        base.high())));
    }

    private static List<Point> places(Scene scene, Set<Use> uses) {
        return scene.body().provisions().stream()
                .filter(one -> uses.contains(one.use()))
                .map(Provision::at)
                .toList();
    }
}
