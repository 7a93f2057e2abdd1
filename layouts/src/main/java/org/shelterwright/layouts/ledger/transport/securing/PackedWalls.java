package org.shelterwright.layouts.ledger.transport.securing;

import java.util.Locale;
import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.transit.Stop;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.transport.Gravity;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * The walls and ends of a car hold what is packed between them: {@code F_B = (c − µ c_z) m g} for all of it. Source: EN 12195-1:2010,
 * blocking (from memory); walls of containers after ISO 1496-1: ends 0.4 P, sides 0.6 P (from memory).
 */
final class PackedWalls extends LegLimit {
    PackedWalls() {
        super(
                "walls",
                "Walls against a packed load",
                Source.fromMemory("EN 12195-1:2010 and ISO 1496-1", "blocking (c − µ cz) m g; ends 0.4 P, sides 0.6 P"),
                "No packed load goes on this leg.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            if (load.load().packed() && !load.pieces().isEmpty()) {
                assess(leg, load, rows);
            }
        }
    }

    private void assess(LegScene leg, PlacedLoad load, Rows rows) {
        RowDraft draft = draft(leg, rows, "Walls, " + load.name()).units(load.ids());
        String unknown = load.unknown().orElse(null);
        double friction = 1;
        for (PlacedPiece piece : load.pieces()) {
            Optional<Double> own = leg.friction(piece.shape(), load.car());
            unknown = unknown == null && own.isEmpty()
                    ? "The friction of " + piece.name() + " on "
                            + load.car().deck().material().word() + " is not known."
                    : unknown;
            friction = Math.min(friction, own.orElse(0.0));
        }
        Push worst = null;
        double need = 0;
        double bears = 1;
        double weight = (load.massKg() + load.uncertaintyKg()) * Gravity.STANDARD;
        for (Push push : Push.of(leg.rules(), leg.rules().valueOr(Figure.TIE_DOWN_FACTOR, 1.1))) {
            if (push.toward() == Face.TOP) {
                continue;
            }
            Optional<Stop> stop = load.car().stops().stream()
                    .filter(one -> one.side() == push.toward())
                    .findFirst();
            Double wall = stop.map(one -> one.bearsN(load.car().ratedLoadKg(), Gravity.STANDARD))
                    .orElse(null);
            if (wall == null) {
                unknown = unknown == null
                        ? "The " + load.car().name() + " states no strength of its "
                                + push.toward().name().toLowerCase(Locale.ROOT) + ". Give \"stops\" in car "
                                + load.car().id() + "."
                        : unknown;
                continue;
            }
            double force = Math.max(0, push.g() - friction * push.downG()) * weight;
            if (worst == null || force / wall > need / bears) {
                worst = push;
                need = force;
                bears = wall;
            }
        }
        if (unknown != null) {
            rows.add(draft.notAssessed(unknown));
        } else if (worst != null) {
            rows.add(draft.state(leg.state() + ", " + worst.text())
                    .mend(need > bears ? "Tie the load down as well, or put part of it into another car." : null)
                    .atMost(
                            need / 1000,
                            bears / 1000,
                            "kN",
                            "The load of " + load.name() + " leans on the "
                                    + worst.toward().name().toLowerCase(Locale.ROOT) + " with "
                                    + Amounts.number(need / 1000, 1) + " kN (" + worst.text() + ")."));
        }
    }
}
