package org.shelterwright.layouts.ledger.racks;

import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;

/**
 * The pieces of a unit draw and heat no more than its catalog entry says, which the supplies and the heat balance count with:
 * ΣP ≤ P of the item, ΣQ ≤ Q of the item.
 *
 * <p>Source: the power of the item in the catalog.
 */
final class PowerStated extends NamedLimit implements Limit.OfWhole {
    PowerStated() {
        super(
                "racks.power-stated",
                Subject.RACKS,
                "Power of the rack as stated",
                Severity.MEDIUM,
                Source.stated("Catalog", "power of the item"),
                "No bay holds rack-mounted pieces.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        scene.interiors().racks().forEach((id, pieces) -> scene.unit(id).ifPresent(unit -> {
            double watts = 0;
            double heat = 0;
            for (InRack piece : pieces) {
                Power power = piece.piece().power();
                if (power != null) {
                    watts += power.ratedW();
                    Double own = power.heatW();
                    heat += own == null ? power.ratedW() : own;
                }
            }
            Power stated = unit.item().power();
            RowDraft draft = rows.draft(this, "Power as stated, " + unit.name()).units(unit);
            if (watts == 0 && heat == 0) {
                rows.add(draft.held("No piece in " + unit.name() + " draws power."));
            } else if (stated == null) {
                rows.add(draft.mend("Give the power of item " + unit.item().id() + ".")
                        .notAssessed("The pieces in " + unit.name() + " draw " + Amounts.number(watts, 0)
                                + " W, and its item states no power."));
            } else {
                Double own = stated.heatW();
                double heatMost = own == null ? stated.ratedW() : own;
                boolean byHeat = heat * stated.ratedW() > watts * heatMost;
                rows.add(draft.mend("Raise the power of item " + unit.item().id() + ", or take a piece out.")
                        .atMost(
                                byHeat ? heat : watts,
                                byHeat ? heatMost : stated.ratedW(),
                                "W",
                                "The pieces in " + unit.name() + (byHeat ? " give off " : " draw ")
                                        + Amounts.number(byHeat ? heat : watts, 0) + " W; the "
                                        + (byHeat ? "heat balance counts " : "supplies count ")
                                        + Amounts.number(byHeat ? heatMost : stated.ratedW(), 0) + " W."));
            }
        }));
    }
}
