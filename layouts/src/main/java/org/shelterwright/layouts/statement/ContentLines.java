package org.shelterwright.layouts.statement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.UnitMasses;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.statement.MassLine.When;

/** The lines of a unit and of the pieces that ride or are used in it, each with its own arm. */
final class ContentLines {
    private final Scene scene;
    private final Maker maker;

    /** Makes a line of a mass. */
    interface Maker {
        MassLine line(
                String group,
                String item,
                String label,
                @Nullable String id,
                MassData data,
                @Nullable Point arm,
                When when);
    }

    ContentLines(Scene scene, Maker maker) {
        this.scene = scene;
        this.maker = maker;
    }

    void add(List<MassLine> lines, PlacedUnit unit, Pose pose, When when) {
        Item item = unit.item();
        List<Held> riding = scene.interiors().held(unit.id());
        Interior interior = item.interior();
        MassData empty = interior == null ? null : interior.empty();
        MassData own = riding.isEmpty()
                ? item.mass()
                : empty == null ? new MassData(null, null, MassBasis.ESTIMATED, null, null, null) : empty;
        String name = riding.isEmpty() ? item.name() : item.name() + ", empty";
        lines.add(line(unit, name, unit.name(), own, own.centre(), pose, when));
        for (Held held : riding) {
            When there = held.spec().takenOut() && when == When.ALWAYS ? When.ON_THE_ROAD : when;
            if (!held.spec().takenOut() || there == When.ON_THE_ROAD) {
                lines.add(line(unit, held.piece().name(), held.name(), held.piece().mass(), held.centre(), pose, there));
            }
        }
        if (when != When.ON_THE_ROAD) {
            for (Held held : UnitMasses.usedAt(scene.layout(), scene.interiors(), unit.id())) {
                Point top = UnitMasses.workTop(item);
                lines.add(line(
                        unit, held.piece().name() + ", in use", held.name(), held.piece().mass(), top, pose, When.ON_STATION));
            }
        }
    }

    private MassLine line(
            PlacedUnit unit, String item, String label, MassData data, @Nullable Point centre, Pose pose, When when) {
        Point arm = centre == null ? null : pose.apply(centre, unit.item().size());
        return maker.line(unit.spec().group(), item, label, unit.id(), data, arm, when);
    }
}
