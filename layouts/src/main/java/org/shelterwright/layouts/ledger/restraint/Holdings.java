package org.shelterwright.layouts.ledger.restraint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.ledger.fit.CarriedMass;
import org.shelterwright.layouts.ledger.fit.Landing;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * How every bolted unit of a scene is held. What is found for a unit stays with it, so that after a move only the moved unit,
 * what carries it and what carried it are solved again.
 *
 * @param pushes every direction of every load case that applies
 */
record Holdings(List<Push> pushes, List<Holding> all) {
    /** The last holding of a unit, with what it was found for. */
    private static final class Kept {
        private @Nullable List<PlacedUnit> about;
        private @Nullable Holding holding;

        synchronized Holding get(List<PlacedUnit> wanted, Supplier<Holding> maker) {
            Holding found = holding;
            if (found == null || !same(about, wanted)) {
                found = maker.get();
                holding = found;
                about = wanted;
            }
            return found;
        }

        private static boolean same(@Nullable List<PlacedUnit> a, List<PlacedUnit> b) {
            if (a == null || a.size() != b.size()) {
                return false;
            }
            for (int i = 0; i < b.size(); i++) {
                if (a.get(i) != b.get(i)) {
                    return false;
                }
            }
            return true;
        }
    }

    static Holdings of(Scene scene, Fasteners fasteners) {
        return scene.derived(Holdings.class, one -> make(one, fasteners));
    }

    private static Holdings make(Scene scene, Fasteners fasteners) {
        List<Push> pushes = Push.of(scene.rules().loadCases());
        MassModel model = new MassModel(scene.rules());
        Landing landing = new Landing(scene.body().hardPoints());
        List<Holding> all = new ArrayList<>();
        for (PlacedUnit unit : scene.units()) {
            if (!unit.item().mounting().loose()) {
                CarriedMass carried = CarriedMass.of(scene, model, unit, Situation.ON_THE_ROAD);
                List<PlacedUnit> about = new ArrayList<>(carried.units());
                String host = unit.place(Situation.ON_THE_ROAD).host();
                if (host != null) {
                    scene.unit(host).ifPresent(about::add);
                }
                all.add(unit.derived(Kept.class, key -> new Kept())
                        .get(
                                about,
                                () -> Holding.of(
                                        scene, landing, fasteners, unit, StackLoad.of(model, carried), pushes)));
            }
        }
        return new Holdings(pushes, List.copyOf(all));
    }
}
