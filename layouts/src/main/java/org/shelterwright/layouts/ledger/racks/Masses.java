package org.shelterwright.layouts.ledger.racks;

import java.util.OptionalDouble;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.state.MassModel;

/** Masses of pieces as limits count them. */
final class Masses {
    private Masses() {}

    /** Mass with growth and uncertainty (kg); empty if not stated. */
    static OptionalDouble worstKg(MassModel model, Held held) {
        MassData mass = held.piece().mass();
        OptionalDouble grown = model.grownKg(mass);
        OptionalDouble range = model.uncertaintyKg(mass);
        return grown.isEmpty() || range.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(grown.getAsDouble() + range.getAsDouble());
    }
}
