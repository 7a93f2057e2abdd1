package org.shelterwright.layouts.ledger.transport.securing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.transit.Stop;
import org.shelterwright.layouts.ledger.transport.Gravity;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * Pieces that lean on an end or wall of a car, the first on the wall and each further one on those before it. The wall's strength is
 * shared by mass. What touches within 20 mm leans.
 */
final class LeanChain {
    private static final int TOUCHES = 20_000;

    private LeanChain() {}

    /** What a wall holds of one piece that leans on it, by itself or through others. */
    static Blocking stop(PlacedLoad load, PlacedPiece piece, Face toward) {
        String side = toward.name().toLowerCase(Locale.ROOT);
        Optional<Stop> stop =
                load.car().stops().stream().filter(one -> one.side() == toward).findFirst();
        if (stop.isEmpty()) {
            return Blocking.missing("The " + load.car().name() + " has no end or wall at its " + side
                    + " that a load may lean on. Block it otherwise.");
        }
        Double bears = stop.get().bearsN(load.car().ratedLoadKg(), Gravity.STANDARD);
        if (bears == null) {
            return Blocking.missing("The " + side + " of the " + load.car().name()
                    + " states no strength. Give \"ratingN\" of its stop.");
        }
        List<PlacedPiece> chain = chain(load, toward);
        if (!chain.contains(piece)) {
            return Blocking.missing(piece.name() + " is to lean on the " + side + " of " + load.name() + " but stands "
                    + gap(load, piece.box(), toward) / 1000 + " mm from it. Move it there.");
        }
        double all = chain.stream().mapToDouble(one -> one.shape().mostKg()).sum();
        return new Blocking(all <= 0 ? 0 : bears * piece.shape().mostKg() / all, 0, null);
    }

    private static List<PlacedPiece> chain(PlacedLoad load, Face toward) {
        List<PlacedPiece> chain = new ArrayList<>();
        boolean more = true;
        while (more) {
            more = false;
            for (PlacedPiece piece : load.pieces()) {
                if (!chain.contains(piece) && leans(load, piece, chain, toward)) {
                    chain.add(piece);
                    more = true;
                }
            }
        }
        return chain;
    }

    private static boolean leans(PlacedLoad load, PlacedPiece piece, List<PlacedPiece> chain, Face toward) {
        Box box = piece.box();
        return gap(load, box, toward) <= TOUCHES || chain.stream().anyMatch(other -> touches(box, other.box(), toward));
    }

    private static boolean touches(Box box, Box ahead, Face toward) {
        boolean high = box.z0() < ahead.z1() && ahead.z0() < box.z1();
        boolean wide = box.y0() < ahead.y1() && ahead.y0() < box.y1();
        boolean along = box.x0() < ahead.x1() && ahead.x0() < box.x1();
        int gap = switch (toward) {
            case FRONT -> ahead.x0() - box.x1();
            case REAR -> box.x0() - ahead.x1();
            case LEFT -> ahead.y0() - box.y1();
            default -> box.y0() - ahead.y1();
        };
        boolean faces = toward == Face.FRONT || toward == Face.REAR ? wide : along;
        return gap >= 0 && gap <= TOUCHES && high && faces;
    }

    private static int gap(PlacedLoad load, Box box, Face toward) {
        return switch (toward) {
            case FRONT -> load.car().deck().length() - box.x1();
            case REAR -> box.x0();
            case LEFT -> load.car().deck().width() - box.y1();
            default -> box.y0();
        };
    }
}
