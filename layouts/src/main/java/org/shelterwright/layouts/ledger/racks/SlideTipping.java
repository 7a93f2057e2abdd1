package org.shelterwright.layouts.ledger.racks;

import java.util.List;
import java.util.OptionalDouble;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.restraint.Fasteners;
import org.shelterwright.layouts.ledger.restraint.SlidOut;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * A rack does not tip while its worst piece is slid out: the fixing group holds the weight of the rack with the piece moved out
 * by its travel, the moment of the shift times a safety factor. Bolts by their proof load, hard points by T/T₁ + V/V₁.
 *
 * <p>Source: statics; the fixing group as in restraint.
 */
final class SlideTipping extends NamedLimit implements Limit.OfWhole {
    private final Fasteners fasteners;

    SlideTipping(Fasteners fasteners) {
        super(
                "racks.tipping",
                Subject.RACKS,
                "Tipping with a piece slid out",
                Severity.HARD,
                Source.commonPractice("One slide-out at a time; the fixings hold it with a safety factor"),
                "No bay holds pieces that slide out.");
        this.fasteners = fasteners;
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        OptionalDouble factor = scene.rules().value(Figure.RACK_TIP_FACTOR);
        MassModel model = new MassModel(scene.rules());
        for (FilledBay bay : FilledBay.of(scene)) {
            InRack worst = null;
            double most = -1;
            for (InRack piece : bay.pieces()) {
                Integer travel = piece.mount().slideTravel();
                double moment = travel == null
                        ? -1
                        : Masses.worstKg(model, piece).orElse(Double.MAX_VALUE) * Lengths.metres(travel);
                if (moment > most) {
                    most = moment;
                    worst = piece;
                }
            }
            if (worst != null) {
                rows.add(
                        factor.isEmpty()
                                ? UnsetFigure.row(rows, this, Figure.RACK_TIP_FACTOR)
                                : row(scene, bay, worst, model, factor.getAsDouble(), rows));
            }
        }
    }

    private Row row(Scene scene, FilledBay bay, InRack piece, MassModel model, double factor, Rows rows) {
        RowDraft draft = rows.draft(this, bay.titled(title()))
                .units(bay.unit())
                .place(bay.placed(piece.box()))
                .state(Wording.situation(Situation.ON_STATION));
        OptionalDouble kg = Masses.worstKg(model, piece);
        if (kg.isEmpty()) {
            return BayLimit.missing(draft, "mass", List.of(piece.name()));
        }
        Integer travel = piece.mount().slideTravel();
        Face way = bay.unit().pose(Situation.ON_STATION).apply(bay.bay().front());
        double shiftM = way.sign() * factor * Lengths.metres(travel == null ? 0 : travel);
        SlidOut out = SlidOut.of(scene, fasteners, bay.unit(), way.axis(), kg.getAsDouble() * shiftM);
        if (!out.missing().isEmpty()) {
            return draft.mend("State it in the catalog.")
                    .notAssessed("To tell whether " + bay.unit().name() + " tips, there must be stated "
                            + Wording.list(out.missing()) + ".");
        }
        return draft.mend("Bolt " + bay.unit().name() + " to stronger or wider hard points, or brace it to a wall.")
                .atMost(
                        out.use(),
                        1,
                        "share",
                        "With " + piece.name() + " slid out, " + bay.unit().name() + " uses "
                                + Amounts.percent(out.use()) + " of what its fixings bear, with a factor of "
                                + Amounts.number(factor, 2) + " on the moment.");
    }
}
