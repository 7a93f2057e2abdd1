package org.shelterwright.layouts.ledger.stowage;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * A stowage place of a placed unit with the pieces in it.
 *
 * @param pieces in the order of the brief
 */
public record FilledPlace(PlacedUnit unit, Stowage stowage, List<InPlace> pieces) {
    public FilledPlace {
        pieces = List.copyOf(pieces);
    }

    private record All(List<FilledPlace> list) {}

    /** The places of placed units that hold pieces, in the order of the brief; kept with the scene. */
    public static List<FilledPlace> of(Scene scene) {
        return scene.derived(All.class, FilledPlace::find).list();
    }

    private static All find(Scene scene) {
        List<FilledPlace> found = new ArrayList<>();
        scene.interiors().stowages().forEach((id, pieces) -> scene.unit(id).ifPresent(unit -> {
            for (Stowage stowage : unit.item().stowages()) {
                List<InPlace> own = pieces.stream()
                        .filter(piece -> piece.stowage().name().equals(stowage.name()))
                        .toList();
                if (!own.isEmpty()) {
                    found.add(new FilledPlace(unit, stowage, own));
                }
            }
        }));
        return new All(List.copyOf(found));
    }

    /** Name for people, such as "top tray of Gauge locker". */
    public String name() {
        return stowage.name() + " of " + unit.name();
    }

    /** A cuboid of its item in the frame of the body, in a situation. */
    Box placed(Box box, Situation situation) {
        return unit.pose(situation).apply(box, unit.item().size());
    }
}
