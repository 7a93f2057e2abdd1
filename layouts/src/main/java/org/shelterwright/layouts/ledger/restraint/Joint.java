package org.shelterwright.layouts.ledger.restraint;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.ledger.fit.Landing;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * A fixing as it is bolted: with what is known of bolt, hard point and torque.
 *
 * @param held bolt and hard point; {@code null} if something is missing
 * @param missing what is missing, in words; empty if nothing is
 * @param torqueNm tightening torque (N·m); {@code null} if it is not known
 */
public record Joint(
        PlacedFixing placed,
        @Nullable HeldFixing held,
        String missing,
        @Nullable Double torqueNm) {
    /** The joints of a unit on station, in the order of the item's fixings. */
    public static List<Joint> of(Scene scene, Fasteners fasteners, PlacedUnit unit) {
        Landing landing = new Landing(scene.body().hardPoints());
        return PlacedFixing.of(unit, Situation.ON_STATION).stream()
                .map(placed -> of(scene, landing, fasteners, unit, placed))
                .toList();
    }

    private static Joint of(Scene scene, Landing landing, Fasteners fasteners, PlacedUnit unit, PlacedFixing placed) {
        HeldFixing.Judged judged = HeldFixing.of(scene, landing, fasteners, unit, placed);
        HeldFixing held = judged.fixing();
        OptionalDouble torque = held == null ? OptionalDouble.empty() : Torque.of(scene.rules(), held);
        return new Joint(placed, held, judged.missing(), torque.isPresent() ? torque.getAsDouble() : null);
    }
}
