package org.shelterwright.layouts.boltdown;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.PartOff;
import org.shelterwright.layouts.handling.Carried;
import org.shelterwright.layouts.handling.Handling;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.ways.Passage;

/** How long the work of a step takes (min), by the times of the rules; what they do not set takes none. */
final class StepTimes {
    /** A blanking panel is held by its screws only: a fifth of the time of a piece. Common practice. */
    private static final double BLANK_SHARE = 0.2;

    private final Rules rules;

    StepTimes(Rules rules) {
        this.rules = rules;
    }

    /** Filling a rack on the bench. */
    double bench(Carried carried) {
        return fitting(carried.filled());
    }

    double in(Passage passage, @Nullable Handling handling) {
        boolean hoist = handling != null && handling.means() == Handling.Means.HOIST;
        return minutes(Figure.MINUTES_IN)
                + (hoist ? minutes(Figure.MINUTES_PER_HOIST) : 0)
                + minutes(Figure.MINUTES_PER_METRE) * passage.length() * 1e-6;
    }

    double atPlace(List<Bolting> boltings, List<CableTask> cables, List<StepCheck> checks, Carried carried) {
        int fixings = boltings.stream().mapToInt(one -> one.places().size()).sum();
        int ends = cables.stream().mapToInt(CableTask::ends).sum();
        double metres = cables.stream().mapToDouble(CableTask::laidMetres).sum();
        return minutes(Figure.MINUTES_PER_FIXING) * fixings
                + minutes(Figure.MINUTES_PER_CABLE_END) * ends
                + minutes(Figure.MINUTES_PER_CABLE_METRE) * metres
                + minutes(Figure.MINUTES_PER_CHECK) * checks.size()
                + fitting(carried.later())
                + carried.off().stream().mapToDouble(PartOff::minutes).sum();
    }

    private double fitting(List<InRack> pieces) {
        double shares = pieces.stream()
                .mapToDouble(piece -> piece.mount().blank() ? BLANK_SHARE : 1)
                .sum();
        return minutes(Figure.MINUTES_PER_PIECE) * shares;
    }

    private double minutes(Figure figure) {
        return rules.valueOr(figure, 0);
    }
}
