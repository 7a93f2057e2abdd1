package org.shelterwright.layouts.ledger.floor;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.Influence;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.MassModel;
import org.shelterwright.layouts.state.Quantity;

/**
 * The loads of the floor in each load state: on the road and on station, all tanks of the units full and all at their least. A
 * unit presses with its own mass and with all that stands on it or hangs under it; what hangs on walls or the roof does not press
 * on the floor.
 */
final class FloorLoads {
    /** Standard gravity (m/s²): 3rd CGPM, 1901. */
    static final double G = 9.80665;

    private final List<FloorCase> cases = new ArrayList<>();
    private final List<Gap> gaps;

    private FloorLoads(Scene scene) {
        gaps = LoadStates.of(scene).gaps(Quantity.ofBody(Influence.MOMENT_X));
        MassModel model = new MassModel(scene.rules());
        boolean moves = false;
        boolean tanks = false;
        for (PlacedUnit unit : scene.units()) {
            moves |= unit.placement().road() != null;
            tanks |= !unit.item().tanks().isEmpty();
        }
        addCases(scene, model, Situation.ON_THE_ROAD, tanks);
        if (moves) {
            addCases(scene, model, Situation.ON_STATION, tanks);
        }
    }

    static FloorLoads of(Scene scene) {
        return scene.derived(FloorLoads.class, FloorLoads::new);
    }

    List<FloorCase> cases() {
        return cases;
    }

    /** Figures that are missing for the loads. */
    List<Gap> gaps() {
        return gaps;
    }

    private void addCases(Scene scene, MassModel model, Situation situation, boolean tanks) {
        List<PlacedUnit> units = scene.units();
        UnitSums low = new UnitSums(units.size());
        Footing[] footings = new Footing[units.size()];
        for (PlacedUnit unit : units) {
            footings[unit.index()] = Footing.of(unit, situation);
        }
        for (PlacedUnit unit : units) {
            int root = root(scene, unit, situation, footings);
            if (root >= 0) {
                low.add(unit, model, situation, root);
            }
        }
        UnitSums full = tanks ? low.withTanksFull(units, situation) : low;
        String name = Wording.situation(situation);
        FloorCase first = FloorCase.of(units, footings, full, tanks ? name + ", tanks full" : name);
        cases.add(first);
        if (tanks) {
            cases.add(first.with(footings, low, name + ", tanks low"));
        }
    }

    /** The unit on the floor that carries a unit in the end; -1 if none does. */
    private static int root(Scene scene, PlacedUnit unit, Situation situation, Footing[] footings) {
        PlacedUnit at = unit;
        for (int steps = 0; steps <= scene.units().size(); steps++) {
            String host = at.place(situation).host();
            if (host == null) {
                return footings[at.index()].plane() == null ? -1 : at.index();
            }
            PlacedUnit next = scene.unit(host).orElse(null);
            if (next == null) {
                return -1;
            }
            at = next;
        }
        return -1;
    }
}
