package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.app.look.Tint;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.scene.PlacedUnit;

/** The one place that says how a unit looks: its solids in its tint, with the detail of its kind on the greatest one. */
public final class UnitLook {

    private UnitLook() {}

    /** The blocks of a unit in a situation, in the frame of the body. */
    public static List<Block> blocks(PlacedUnit unit, Situation situation) {
        Item item = unit.item();
        Shade shade = Shade.of(Tint.of(item));
        Pose pose = unit.pose(situation);
        List<Box> solids = item.solids(situation);
        Box greatest =
                solids.stream().max(Comparator.comparingDouble(Box::volumeM3)).orElse(null);
        List<Block> blocks = new ArrayList<>();
        for (Box solid : solids) {
            List<Trace> detail = solid == greatest
                    ? FrontDetail.of(item, solid).stream()
                            .map(line -> new Trace(
                                    line.stream()
                                            .map(point -> pose.apply(point, item.size()))
                                            .toList(),
                                    Weights.FITTING))
                            .toList()
                    : List.of();
            blocks.add(new Block(unit.id(), pose.apply(solid, item.size()), shade, detail));
        }
        return blocks;
    }
}
