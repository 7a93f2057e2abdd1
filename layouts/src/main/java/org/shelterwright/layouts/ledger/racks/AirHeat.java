package org.shelterwright.layouts.ledger.racks;

import java.util.OptionalDouble;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * The air that goes through a bay carries its heat away: ΣQ ≤ V ρ c ΔT, with ρ 1.2 kg/m³ and c 1.005 kJ/(kg K), so that 1 kW
 * warms 300 m³/h by 10 K.
 *
 * <p>Source: heat of a stream of air; common practice for the rise.
 */
final class AirHeat extends BayLimit {
    /** Heat that a cubic metre of air takes up for a kelvin (J): 1.2 kg/m³ times 1005 J/(kg K). */
    private static final double PER_CUBIC_METRE = 1.2 * 1005;

    AirHeat() {
        super(
                "racks.heat",
                "Heat of the rack",
                Severity.MEDIUM,
                Source.commonPractice("Air of 300 m³/h takes up 1 kW with a rise of 10 K"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        OptionalDouble rise = scene.rules().value(Figure.RACK_AIR_RISE);
        if (rise.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.RACK_AIR_RISE));
            return;
        }
        double heat = 0;
        for (InRack piece : bay.pieces()) {
            Power power = piece.piece().power();
            Double own = power == null ? null : power.heatW();
            heat += power == null ? 0 : own == null ? power.ratedW() : own;
        }
        Double air = bay.bay().airM3h();
        if (heat > 0 && air == null) {
            rows.add(draft(rows, bay)
                    .mend("Give airM3h of the bay in item " + bay.unit().item().id() + ".")
                    .notAssessed("How much air goes through " + bay.name() + " is not stated."));
            return;
        }
        double most = (air == null ? 0 : air) / 3600 * PER_CUBIC_METRE * rise.getAsDouble();
        rows.add(draft(rows, bay)
                .mend("Give the bay a stronger fan, or put a piece into another rack.")
                .atMost(
                        heat,
                        most,
                        "W",
                        "The pieces in " + bay.name() + " give off " + Amounts.number(heat, 0)
                                + " W; its air carries away " + Amounts.number(most, 0) + " W with a rise of "
                                + Amounts.number(rise.getAsDouble(), 1) + " K."));
    }
}
