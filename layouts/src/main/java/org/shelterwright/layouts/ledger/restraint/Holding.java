package org.shelterwright.layouts.ledger.restraint;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.ledger.fit.Landing;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * How one bolted unit is held on the road.
 *
 * @param load what its fixings hold
 * @param fixings those that are fully known
 * @param missing what is not known, in words; if anything is, nothing is solved
 * @param solved forces under every push; {@code null} if something is missing or nothing pushes
 * @param mend what would make it hold; {@code null} if it does, or is not solved
 */
record Holding(
        PlacedUnit unit,
        StackLoad load,
        List<HeldFixing> fixings,
        List<String> missing,
        @Nullable Solved solved,
        @Nullable Change mend) {
    Holding {
        fixings = List.copyOf(fixings);
        missing = List.copyOf(missing);
    }

    static Holding of(
            Scene scene, Landing landing, Fasteners fasteners, PlacedUnit unit, StackLoad load, List<Push> pushes) {
        List<String> missing = new ArrayList<>(load.missing());
        List<HeldFixing> fixings = new ArrayList<>();
        List<PlacedFixing> placed = PlacedFixing.of(unit, Situation.ON_THE_ROAD);
        if (placed.isEmpty()) {
            missing.add("any fixing of " + unit.name() + " for the way in which it is mounted");
        }
        for (PlacedFixing one : placed) {
            HeldFixing.Judged judged = HeldFixing.of(scene, landing, fasteners, unit, one);
            HeldFixing fixing = judged.fixing();
            if (fixing != null) {
                fixings.add(fixing);
            } else if (!missing.contains(judged.missing())) {
                missing.add(judged.missing());
            }
        }
        if (!missing.isEmpty() || pushes.isEmpty()) {
            return new Holding(unit, load, fixings, missing, null, null);
        }
        Solved solved = Solved.of(unit, fixings, load, pushes);
        Change mend = solved.holds()
                ? null
                : new WhatIf(scene, landing, fasteners, unit, load, pushes).change(fixings, solved);
        return new Holding(unit, load, fixings, missing, solved, mend);
    }

    /** What the most used fixing bears, in one sentence. */
    static String sentence(PlacedUnit unit, List<HeldFixing> fixings, Strain strain) {
        HeldFixing fixing = fixings.get(strain.fixing());
        String strength = strain.ofBolt()
                ? "its bolt "
                        + Fasteners.name(fixing.bolt().thread(), fixing.bolt().grade())
                : fixing.into();
        return "Fixing " + fixing.name() + " of " + unit.name() + " bears " + newtons(strain.pullN()) + " of pull and "
                + newtons(strain.shearN()) + " of shear under " + strain.push().text() + ": "
                + Amounts.percent(strain.use()) + " of what " + strength + " bears.";
    }

    /** A force with its unit, in whole newtons. */
    static String newtons(double force) {
        return Amounts.number(force, 0) + " N";
    }
}
