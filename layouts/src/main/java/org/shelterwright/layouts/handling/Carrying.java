package org.shelterwright.layouts.handling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Bringing;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.PartOff;
import org.shelterwright.layouts.handling.Handling.Means;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.inside.UnitMasses;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Chooses in what state units are brought in. A rack is filled on the bench, where it is easier, unless it is then too heavy for two
 * people or the trolley and is not without its pieces; parts that may come off come off if it is too heavy with them, or has no
 * way in. Loose pieces are never carried in with the unit.
 */
public final class Carrying {
    private final Scene scene;
    private final Handlings handlings;

    public Carrying(Scene scene) {
        this.scene = scene;
        this.handlings = new Handlings(scene.rules());
    }

    /** The first figure that handling needs and the rules do not set; empty if all are set. */
    public Optional<Figure> missing() {
        return handlings.missing();
    }

    /**
     * The state of a unit.
     *
     * @param apart whether its parts must be off, since it has no way in with them
     */
    public Carried of(PlacedUnit unit, boolean apart) {
        List<InRack> racked = new ArrayList<>(scene.interiors().racked(unit.id()));
        racked.sort(Comparator.comparingInt(InRack::lowest));
        int stowed = scene.interiors().stowed(unit.id()).size();
        Bringing bringing = unit.item().bringing();
        List<PartOff> parts = bringing == null ? List.of() : bringing.partsOff();
        List<Carried> choices = new ArrayList<>();
        for (boolean off : apart || parts.isEmpty() ? new boolean[] {apart} : new boolean[] {false, true}) {
            for (boolean full : racked.isEmpty() ? new boolean[] {true} : new boolean[] {true, false}) {
                choices.add(new Carried(
                        full ? racked : List.of(),
                        full ? List.of() : racked,
                        stowed,
                        off ? parts : List.of(),
                        handling(unit, full ? racked : List.of(), off && bringing != null ? bringing.partsKg() : 0)));
            }
        }
        return choices.stream()
                .filter(Carrying::easy)
                .findFirst()
                .or(() -> choices.stream().filter(Carrying::held).findFirst())
                .orElse(choices.get(choices.size() - 1));
    }

    private @Nullable Handling handling(PlacedUnit unit, List<InRack> with, double lessKg) {
        boolean anyInside = !scene.interiors().held(unit.id()).isEmpty();
        Interior interior = unit.item().interior();
        MassData empty = !anyInside ? unit.item().mass() : interior == null ? null : interior.empty();
        if (empty == null) {
            return null;
        }
        MassData filled = with.isEmpty() ? empty : UnitMasses.sum(empty, with, scene.rules());
        return handlings.of(unit, less(filled, lessKg)).orElse(null);
    }

    private static MassData less(MassData mass, double kg) {
        Double own = mass.massKg();
        return own == null || kg == 0
                ? mass
                : new MassData(
                        Math.max(0, own - kg),
                        mass.centre(),
                        mass.basis(),
                        mass.growthShare(),
                        mass.uncertaintyKg(),
                        mass.centreUncertainty());
    }

    private static boolean easy(Carried carried) {
        Handling handling = carried.handling();
        return handling != null
                && handling.held()
                && (handling.means() == Means.TROLLEY
                        || handling.means() == Means.BY_HAND && handling.people() <= Handlings.READILY);
    }

    private static boolean held(Carried carried) {
        Handling handling = carried.handling();
        return handling != null && handling.held();
    }
}
