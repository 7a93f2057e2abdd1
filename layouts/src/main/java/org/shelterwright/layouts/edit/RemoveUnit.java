package org.shelterwright.layouts.edit;

import java.util.List;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.brief.Services;
import org.shelterwright.layouts.brief.Wish;
import org.shelterwright.layouts.layout.Layout;

/**
 * Removes a unit from the brief, with its place, its wires and feeds, its people, what was to be within it, and the wishes that make no sense
 * without it.
 * What is mounted
 * on or under it comes out.
 *
 * @param unit id of the unit
 */
public record RemoveUnit(String unit) implements Edit {
    @Override
    public String name() {
        return "Remove " + unit;
    }

    @Override
    public Layout apply(Layout layout) {
        Units.require(layout, unit);
        Layout cleared = Carried.takeOut(layout, unit);
        Brief old = layout.brief();
        Services services = old.services();
        Brief brief = old.withUnits(old.units().stream()
                        .filter(one -> !one.id().equals(unit))
                        .toList())
                .withOccupants(old.occupants().stream()
                        .filter(one -> !one.unit().equals(unit))
                        .toList())
                .withWishes(old.wishes().stream()
                        .map(this::without)
                        .filter(RemoveUnit::sensible)
                        .toList())
                .withWires(old.wires().stream()
                        .filter(wire -> !ends(wire.from()) && !ends(wire.to()))
                        .toList())
                .withServices(services == null ? null : services.without(unit));
        if (!old.listed().isEmpty() || !old.listed().tasks().isEmpty()) {
            brief = brief.withInventory(without(old.listed()));
        }
        Layout removed =
                Units.with(cleared, brief, Units.used(brief, layout.parts().items()));
        return removed.withAcceptances(removed.acceptances().stream()
                .filter(one -> !one.units().contains(unit))
                .toList());
    }

    /** What was to be within it goes with it, and what was done at it is done at no place that is stated. */
    private Inventory without(Inventory listed) {
        return listed.withoutPlaces(task -> unit.equals(task.unit()))
                .withPieces(listed.pieces().stream()
                        .filter(piece -> !unit.equals(piece.within()))
                        .toList());
    }

    private boolean ends(String end) {
        return end.startsWith(unit + "/");
    }

    private Wish without(Wish wish) {
        if (!wish.units().contains(unit)) {
            return wish;
        }
        List<String> left =
                wish.units().stream().filter(one -> !one.equals(unit)).toList();
        return new Wish(wish.kind(), left, wish.distance(), wish.face());
    }

    private static boolean sensible(Wish wish) {
        return wish.units().size() >= wish.kind().leastUnits();
    }
}
