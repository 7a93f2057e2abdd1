package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * The mass that a unit puts on what carries it: its own, its tanks full, and all that rests on or under it.
 *
 * @param nominalKg as stated (kg); what is not stated counts as zero
 * @param worstKg with growth and uncertainty (kg); what is not stated counts as zero
 * @param units the unit and all that rests on or under it
 * @param missing what is not stated, in words
 */
public record CarriedMass(double nominalKg, double worstKg, List<PlacedUnit> units, List<String> missing) {
    public CarriedMass {
        units = List.copyOf(units);
        missing = List.copyOf(missing);
    }

    /** Cost: the number of units times the length of the chain. Units mounted in a circle are counted once. */
    public static CarriedMass of(Scene scene, MassModel model, PlacedUnit unit, Situation situation) {
        List<PlacedUnit> units = new ArrayList<>();
        BitSet carried = new BitSet();
        add(scene, unit, situation, carried, units);
        double nominalKg = 0;
        double worstKg = 0;
        List<String> missing = new ArrayList<>();
        for (PlacedUnit one : units) {
            nominalKg += nominalKg(one, situation);
            worstKg += worstKg(model, one, situation);
            MassData mass = one.mass(situation);
            if (mass.massKg() == null) {
                missing.add("the mass of " + one.name());
            } else if (worst(model, mass).isEmpty()) {
                missing.add("the growth or uncertainty of the mass of " + one.name());
            }
        }
        return new CarriedMass(nominalKg, worstKg, units, missing);
    }

    /** Mass of one unit with growth, uncertainty and full tanks (kg); what is not stated counts as zero. */
    static double worstKg(MassModel model, PlacedUnit unit, Situation situation) {
        return worstEmptyKg(model, unit, situation) + tanksKg(unit);
    }

    /** The same without the contents of its tanks (kg). */
    public static double worstEmptyKg(MassModel model, PlacedUnit unit, Situation situation) {
        return worst(model, unit.mass(situation)).orElse(0);
    }

    private static double nominalKg(PlacedUnit unit, Situation situation) {
        Double own = unit.mass(situation).massKg();
        return (own == null ? 0 : own) + tanksKg(unit);
    }

    private static OptionalDouble worst(MassModel model, MassData mass) {
        OptionalDouble grownKg = model.grownKg(mass);
        OptionalDouble uncertaintyKg = model.uncertaintyKg(mass);
        return grownKg.isEmpty() || uncertaintyKg.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(grownKg.getAsDouble() + uncertaintyKg.getAsDouble());
    }

    private static double tanksKg(PlacedUnit unit) {
        return unit.item().tanks().stream().mapToDouble(Tank::fullKg).sum();
    }

    private static void add(Scene scene, PlacedUnit unit, Situation situation, BitSet carried, List<PlacedUnit> units) {
        carried.set(unit.index());
        units.add(unit);
        for (PlacedUnit other : scene.units()) {
            if (unit.id().equals(other.place(situation).host()) && !carried.get(other.index())) {
                add(scene, other, situation, carried, units);
            }
        }
    }
}
