package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.layouts.ledger.transport.CarChoice;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Shape;

/** One line of the list of what goes on a leg. */
sealed interface GoesLine {
    /**
     * A car with what its load weighs.
     *
     * @param figure such as "13.8 of 55.5 t"
     */
    record Car(String id, String name, String figure) implements GoesLine {}

    /** A heading over what stands on no car. */
    record Heading(String words) implements GoesLine {}

    /**
     * A piece or container.
     *
     * @param load id of the load that it stands on; {@code null} if none
     * @param figure its mass, or that there is none
     */
    record One(String id, String name, @Nullable String load, String figure, boolean pinned) implements GoesLine {}

    /** Everything that goes on a leg: car by car, then on its own wheels, then what has no place yet. */
    static List<GoesLine> of(LegScene leg) {
        List<GoesLine> lines = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (PlacedLoad load : leg.loads()) {
            taken.add(load.id());
            Double limit = CarChoice.loadLimitKg(load.car(), leg.lineCategory());
            lines.add(new Car(
                    load.id(),
                    load.name(),
                    tonnes(load.massKg()) + (limit == null ? "" : " of " + tonnes(limit)) + Numerals.GAP + "t"));
            for (PlacedPiece piece : load.pieces()) {
                taken.add(piece.id());
                lines.add(new One(
                        piece.id(),
                        piece.name(),
                        load.id(),
                        mass(piece.shape()),
                        piece.stand().pinned()));
            }
        }
        List<GoesLine> own = new ArrayList<>();
        for (LegScene.Driven driven : leg.drives()) {
            taken.add(driven.vehicle().id());
            own.add(one(driven.vehicle()));
            driven.trailer().ifPresent(trailer -> {
                taken.add(trailer.id());
                own.add(one(trailer));
            });
        }
        add(lines, "On their own wheels", own);
        List<GoesLine> open = new ArrayList<>();
        for (Piece piece : leg.journey().journey().pieces()) {
            if (!taken.contains(piece.id())) {
                leg.journey().shape(piece.id()).ifPresent(shape -> open.add(one(shape)));
            }
        }
        add(lines, "On no car yet", open);
        return lines;
    }

    private static void add(List<GoesLine> lines, String heading, List<GoesLine> more) {
        if (!more.isEmpty()) {
            lines.add(new Heading(heading));
            lines.addAll(more);
        }
    }

    private static One one(Shape shape) {
        return new One(shape.id(), shape.name(), null, mass(shape), false);
    }

    private static String mass(Shape shape) {
        Double kg = shape.massKg();
        return kg == null ? "no mass" : tonnes(kg) + Numerals.GAP + "t";
    }

    private static String tonnes(double kg) {
        return Numerals.of(kg / 1000, kg < 995 ? 2 : 1);
    }
}
