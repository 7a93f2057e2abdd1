package org.shelterwright.layouts.ledger.mass;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.Influence;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Quantity;

/**
 * Holds one coordinate of the centre of mass of the filled body against a window, on the road. With both ends set, the demand
 * is the distance from the middle of the window and the capacity is half its width.
 *
 * @param lowM low end (m); {@code null} if none is set
 * @param highM high end (m); {@code null} if none is set
 * @param source where the ends come from
 */
record Window(Axis axis, @Nullable Double lowM, @Nullable Double highM, Source source) {
    private static final Quantity MASS = Quantity.ofBody(Influence.MASS);

    /** The rows of the window, or one that says that there is none or what is missing. */
    Row row(RowDraft draft, Scene scene, String noWindow) {
        LoadStates states = LoadStates.of(scene);
        Quantity moment = Quantity.ofBody(
                switch (axis) {
                    case X -> Influence.MOMENT_X;
                    case Y -> Influence.MOMENT_Y;
                    case Z -> Influence.MOMENT_Z;
                });
        List<Gap> gaps = states.gaps(moment, MASS);
        if (!gaps.isEmpty()) {
            return GapRow.of(draft, gaps);
        }
        Optional<Extreme> high = states.mostRatio(moment, MASS, states.roadModes());
        Optional<Extreme> low = states.leastRatio(moment, MASS, states.roadModes());
        if (high.isEmpty() || low.isEmpty()) {
            return draft.notAssessed("Body and units together have no mass, and so no centre.");
        }
        if (lowM == null && highM == null) {
            return draft.notAssessed(noWindow + " " + range(low.get(), high.get()) + ".");
        }
        return row(draft.source(source), scene, low.get(), high.get());
    }

    private Row row(RowDraft draft, Scene scene, Extreme low, Extreme high) {
        double over = highM == null ? Double.NEGATIVE_INFINITY : high.worst() - highM;
        double under = lowM == null ? Double.NEGATIVE_INFINITY : lowM - low.worst();
        Extreme governing = over >= under ? high : low;
        double off = Math.max(over, under);
        StringBuilder finding = new StringBuilder(range(low, high));
        finding.append(", and may lie ").append(allowed());
        if (off > 0) {
            double massKg = LoadStates.of(scene)
                    .most(MASS, List.of(governing.state().mode()))
                    .nominal();
            finding.append(": ").append(Amounts.mm(off)).append(" too ").append(word(over >= under));
            draft.mend(ShiftMend.of(scene, axis, (over >= under ? -off : off) * massKg));
        }
        String text = finding.append('.').toString();
        draft.state(governing.state().text());
        if (lowM != null && highM != null) {
            double middle = (lowM + highM) / 2;
            return draft.nominal(mm(Math.abs(governing.nominal() - middle)))
                    .atMost(mm(Math.abs(governing.worst() - middle)), mm((highM - lowM) / 2), "mm", text);
        }
        draft.nominal(mm(governing.nominal()));
        return lowM == null && highM != null
                ? draft.atMost(mm(governing.worst()), mm(highM), "mm", text)
                : draft.atLeast(lowM == null ? 0 : mm(lowM), mm(governing.worst()), "mm", text);
    }

    private String range(Extreme low, Extreme high) {
        return "The centre of mass lies " + Amounts.number(mm(low.worst()), 0) + " to " + Amounts.mm(high.worst())
                + from();
    }

    private String allowed() {
        if (lowM != null && highM != null) {
            return Amounts.number(mm(lowM), 0) + " to " + Amounts.mm(highM);
        }
        return lowM == null ? "at most " + Amounts.mm(highM == null ? 0 : highM) : "at least " + Amounts.mm(lowM);
    }

    private String from() {
        return switch (axis) {
            case X -> " from the rear wall";
            case Y -> " from the right wall";
            case Z -> " above the floor";
        };
    }

    private String word(boolean over) {
        return switch (axis) {
            case X -> over ? "far forward" : "far to the rear";
            case Y -> over ? "far to the left" : "far to the right";
            case Z -> over ? "high" : "low";
        };
    }

    private static double mm(double metres) {
        return 1000 * metres;
    }
}
