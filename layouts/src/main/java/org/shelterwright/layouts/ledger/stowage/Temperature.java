package org.shelterwright.layouts.ledger.stowage;

import java.util.List;
import java.util.OptionalDouble;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * Each piece bears the temperatures of its place; a place that states none is as warm as the room. Demand: by how many degrees the
 * place oversteps the range of the piece, of 0; the worst piece governs.
 *
 * <p>Source: temperatures that the pieces bear, and that the places keep, as stated.
 */
final class Temperature extends PlaceLimit {
    Temperature() {
        super(
                "stowage.temperature",
                "Temperature in a place",
                Severity.MEDIUM,
                Source.stated("Catalog", "temperatures of pieces and places"));
    }

    @Override
    void assess(Scene scene, FilledPlace place, Rows rows) {
        List<InPlace> tender = place.pieces().stream()
                .filter(piece -> piece.loose().leastC() != null || piece.loose().mostC() != null)
                .toList();
        if (tender.isEmpty()) {
            rows.add(draft(rows, place).held("No piece in the " + place.name() + " states temperatures that it bears."));
            return;
        }
        Double ownLeast = place.stowage().leastC();
        Double ownMost = place.stowage().mostC();
        OptionalDouble roomLow = scene.rules().value(Figure.STOWAGE_ROOM_LOW);
        OptionalDouble roomHigh = scene.rules().value(Figure.STOWAGE_ROOM_HIGH);
        if (ownLeast == null && roomLow.isEmpty() || ownMost == null && roomHigh.isEmpty()) {
            Figure unset = ownLeast == null && roomLow.isEmpty() ? Figure.STOWAGE_ROOM_LOW : Figure.STOWAGE_ROOM_HIGH;
            rows.add(UnsetFigure.row(rows, this, unset));
            return;
        }
        double least = ownLeast == null ? roomLow.orElse(0) : ownLeast;
        double most = ownMost == null ? roomHigh.orElse(0) : ownMost;
        InPlace worst = null;
        double over = 0;
        for (InPlace piece : tender) {
            Double cold = piece.loose().leastC();
            Double warm = piece.loose().mostC();
            double by = Math.max(cold == null ? 0 : cold - least, warm == null ? 0 : most - warm);
            if (by > over) {
                over = by;
                worst = piece;
            }
        }
        String range = Amounts.number(least, 1) + " to " + Amounts.number(most, 1) + " °C";
        rows.add(
                worst == null
                        ? draft(rows, place)
                                .held("Every piece in the " + place.name() + " bears its " + range + ".")
                        : draft(rows, place, worst)
                                .mend("Put it into a place that is kept cold or warm.")
                                .atMost(
                                        over,
                                        0,
                                        "K",
                                        "The " + place.name() + " has " + range + ", which " + worst.name()
                                                + " does not bear by " + Amounts.number(over, 1) + " K."));
    }
}
