package org.shelterwright.layouts.ledger.transport.securing;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * Direct lashings lie neither too flat nor too steep, tie-downs not too flat. Source: lashing practice at sea: 30° to 50° works, near 0°
 * or 90° is useless (seen); about 45° on wagons (TEA 55-19, seen); the bounds are editable figures.
 */
final class LashingAngle extends LegLimit {
    LashingAngle() {
        super(
                "lashing-angle",
                "Angle of the lashings",
                Source.seen("TEA Pamphlet 55-19", "lashings at about 45° seen from the side"),
                "Nothing is lashed on this leg, or its rules set no bounds.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            List<Rope> ropes = Rope.of(leg, load);
            least(leg, load, ropes.stream().filter(Rope::direct).toList(), Figure.LASHING_LEAST_ANGLE, rows);
            least(leg, load, ropes.stream().filter(one -> !one.direct()).toList(), Figure.TIE_DOWN_LEAST_ANGLE, rows);
            most(leg, load, ropes.stream().filter(Rope::direct).toList(), rows);
        }
    }

    private void least(LegScene leg, PlacedLoad load, List<Rope> ropes, Figure figure, Rows rows) {
        Optional<Rule> rule = leg.rules().rule(figure);
        Optional<Rope> flattest = ropes.stream().min(Comparator.comparingDouble(Rope::angle));
        if (rule.isEmpty() || flattest.isEmpty()) {
            return;
        }
        double angle = flattest.get().angle();
        boolean direct = figure == Figure.LASHING_LEAST_ANGLE;
        rows.add(draft(leg, rows, "Flattest " + (direct ? "lashing, " : "tie-down, ") + load.name())
                .units(ids(flattest.get(), load))
                .source(rule.get().source())
                .mend(
                        angle < rule.get().value()
                                ? "Take an anchor point nearer to the " + (direct ? "eye." : "load.")
                                : null)
                .atLeast(rule.get().value(), Math.max(0.01, angle), "°", text(flattest.get())));
    }

    private void most(LegScene leg, PlacedLoad load, List<Rope> ropes, Rows rows) {
        Optional<Rule> rule = leg.rules().rule(Figure.LASHING_MOST_ANGLE);
        Optional<Rope> steepest = ropes.stream().max(Comparator.comparingDouble(Rope::angle));
        if (rule.isEmpty() || steepest.isEmpty()) {
            return;
        }
        double angle = steepest.get().angle();
        rows.add(draft(leg, rows, "Steepest lashing, " + load.name())
                .units(ids(steepest.get(), load))
                .source(rule.get().source())
                .mend(angle > rule.get().value() ? "Take an anchor point farther from the eye." : null)
                .atMost(Math.max(0, angle), rule.get().value(), "°", text(steepest.get())));
    }

    private static List<String> ids(Rope rope, PlacedLoad load) {
        return Stream.concat(rope.lashing().what().stream(), Stream.of(load.id()))
                .toList();
    }

    private static String text(Rope rope) {
        return String.format(
                Locale.ROOT,
                "Lashing %s stands at %.0f° to the floor.",
                rope.lashing().key(),
                rope.angle());
    }
}
