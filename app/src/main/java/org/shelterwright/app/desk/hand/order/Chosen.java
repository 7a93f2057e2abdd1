package org.shelterwright.app.desk.hand.order;

import java.util.List;
import java.util.Set;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * What is selected, as the layout stands. Its methods refuse with a sentence what the selection lacks.
 *
 * @param ids selected units, the one chosen last at the end
 */
record Chosen(Scene scene, Situation situation, List<String> ids) {
    Chosen {
        ids = List.copyOf(ids);
    }

    static Chosen of(Session session) {
        return new Chosen(
                session.now().scene(),
                session.situation().get(),
                List.copyOf(session.selection().units().get()));
    }

    Layout layout() {
        return scene.layout();
    }

    /** All that is selected, placed or not. */
    List<UnitSpec> specs() {
        if (ids.isEmpty()) {
            throw new IllegalArgumentException("Nothing is selected. Select a unit first.");
        }
        Set<String> chosen = Set.copyOf(ids);
        return layout().brief().units().stream()
                .filter(unit -> chosen.contains(unit.id()))
                .toList();
    }

    /** All that is selected; each must be placed. */
    List<PlacedUnit> placed() {
        List<String> unplaced = specs().stream()
                .filter(unit -> scene.unit(unit.id()).isEmpty())
                .map(UnitSpec::name)
                .toList();
        if (!unplaced.isEmpty()) {
            throw new IllegalArgumentException(
                    Wording.list(unplaced) + (unplaced.size() == 1 ? " is" : " are") + " not placed yet.");
        }
        return ids.stream().flatMap(id -> scene.unit(id).stream()).toList();
    }

    /** All that is selected; at least so many, each placed. */
    List<PlacedUnit> placed(int least) {
        List<PlacedUnit> placed = placed();
        if (placed.size() < least) {
            throw new IllegalArgumentException("Select at least " + least + " units.");
        }
        return placed;
    }

    /** The unit chosen last. */
    PlacedUnit leader() {
        List<PlacedUnit> placed = placed();
        return placed.get(placed.size() - 1);
    }

    /** Such as "Rack 2" or "3 units". */
    String words() {
        List<UnitSpec> specs = specs();
        return specs.size() == 1 ? specs.get(0).name() : specs.size() + " units";
    }
}
