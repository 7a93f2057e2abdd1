package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.stowage.Ways;
import org.shelterwright.layouts.scene.Scene;

/** Makes a term of each stowed piece that a task needs, as it is stowed when the search begins. */
final class HandCompiler {
    private final Scene scene;
    private final Map<String, Integer> stationSlot;
    private final boolean limited;

    /** @param limited whether what must be at hand is limited, or only drawn near */
    HandCompiler(Scene scene, Map<String, Integer> stationSlot, boolean limited) {
        this.scene = scene;
        this.stationSlot = stationSlot;
        this.limited = limited;
    }

    List<HandTerm> terms() {
        List<HandTerm> terms = new ArrayList<>();
        Ways ways = new Ways(scene);
        scene.interiors().stowages().forEach((unit, pieces) -> {
            Integer slot = stationSlot.get(unit);
            for (InPlace piece : pieces) {
                Task task = ways.task(piece.spec()).orElse(null);
                if (slot != null && task != null) {
                    add(terms, slot, item(unit), piece, task);
                }
            }
        });
        return terms;
    }

    private void add(List<HandTerm> terms, int slot, Item item, InPlace piece, Task task) {
        Point middle = piece.box().centre();
        int longest = longest(piece);
        String unit = task.unit();
        Integer other = unit == null ? null : stationSlot.get(unit);
        if (unit != null && other != null && other != slot) {
            Item at = item(unit);
            terms.add(new HandTerm(slot, other, middle, Ways.spot(at), item.size(), at.size(), longest));
        }
        for (Opening opening : unit == null ? scene.body().openings() : List.<Opening>of()) {
            if (opening.name().equals(task.opening())) {
                terms.add(new HandTerm(slot, -1, middle, opening.area().centre(), item.size(), item.size(), longest));
            }
        }
    }

    private int longest(InPlace piece) {
        return limited
                ? Ways.reach(piece.urgency())
                        .map(figure -> scene.rules().value(figure))
                        .filter(bound -> bound.isPresent())
                        .map(bound -> (int) (bound.getAsDouble() * Lengths.MM))
                        .orElse(Integer.MAX_VALUE)
                : Integer.MAX_VALUE;
    }

    private Item item(String unit) {
        UnitSpec spec = scene.brief().units().stream()
                .filter(one -> one.id().equals(unit))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no unit \"" + unit + "\"."));
        return scene.layout().item(spec);
    }
}
