package org.shelterwright.layouts.ledger.restraint;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.ledger.fit.CarriedMass;
import org.shelterwright.layouts.ledger.fit.Landing;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.ledger.restraint.group.GroupForces;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.rules.LoadCase.Basis;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * How the fixings of a unit hold it at rest while a part of it is moved out.
 *
 * @param use of the most used fixing, as a share of its strength; above 1 if nothing balances the load
 * @param missing what is not stated, in words; the use then counts for nothing
 */
public record SlidOut(double use, List<String> missing) {
    private static final double UNHELD = 10;

    public SlidOut {
        missing = List.copyOf(missing);
    }

    /**
     * Solves the fixing group of a bolted unit under its own weight and that of all it carries.
     *
     * @param momentKgM mass moved out times its way along the axis (kg m), signed
     */
    public static SlidOut of(Scene scene, Fasteners fasteners, PlacedUnit unit, Axis axis, double momentKgM) {
        MassModel model = new MassModel(scene.rules());
        StackLoad load = StackLoad.of(model, CarriedMass.of(scene, model, unit, Situation.ON_THE_ROAD));
        List<String> missing = new ArrayList<>(load.missing());
        List<HeldFixing> fixings = new ArrayList<>();
        Landing landing = new Landing(scene.body().hardPoints());
        List<PlacedFixing> placed = PlacedFixing.of(unit, Situation.ON_THE_ROAD);
        if (placed.isEmpty()) {
            missing.add("a fixing of " + unit.name());
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
        if (!missing.isEmpty() || load.massKg() == 0) {
            return new SlidOut(0, missing);
        }
        double shift = momentKgM / load.massKg();
        StackLoad moved = new StackLoad(
                load.massKg(),
                load.x() + (axis == Axis.X ? shift : 0),
                load.y() + (axis == Axis.Y ? shift : 0),
                load.z(),
                0,
                List.of());
        GroupForces forces = new GroupModel(unit, fixings, moved).under(atRest());
        if (!forces.held()) {
            return new SlidOut(UNHELD, List.of());
        }
        double use = 0;
        for (int i = 0; i < fixings.size(); i++) {
            double pull = forces.pullN()[i];
            double shear = forces.shearN(i);
            HeldFixing fixing = fixings.get(i);
            use = Math.max(
                    use, Math.max(fixing.boltUse(pull, shear, Basis.PROOF), fixing.hardPointUse(pull, shear)));
        }
        return new SlidOut(use, List.of());
    }

    private static Push atRest() {
        LoadCase rest = new LoadCase(
                "at-rest", "at rest", 0, 0, 0, 0, 1, 1, 1, 1, 1, Basis.PROOF, Source.commonPractice("Weight alone"));
        return new Push(rest, "down", 0, 0, -1);
    }
}
