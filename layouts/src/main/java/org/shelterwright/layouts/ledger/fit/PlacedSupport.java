package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Support;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * A level face of a placed unit that carries others, in the frame of the body.
 *
 * @param level its height above the floor (µm)
 * @param under true if units hang under it
 * @param ratingKg mass that it carries (kg); {@code null} if not known
 * @param pullOutN what it bears at each fixing, square to it (N); {@code null} if not known
 * @param shearN the same along it (N); {@code null} if not known
 */
public record PlacedSupport(
        PlacedUnit host,
        String name,
        Rect area,
        int level,
        boolean under,
        @Nullable Double ratingKg,
        @Nullable Double pullOutN,
        @Nullable Double shearN) {
    /** The supports of a unit; an item with a stacking strength carries on its whole top too. */
    public static List<PlacedSupport> of(PlacedUnit host, Situation situation) {
        Item item = host.item();
        List<PlacedSupport> supports = new ArrayList<>();
        for (Support support : item.supports()) {
            supports.add(of(host, situation, support));
        }
        if (item.stackingKg() != null) {
            Rect top = Rect.of(item.size().box());
            supports.add(of(host, situation, new Support("top", top, item.size().z(), false, item.stackingKg())));
        }
        return supports;
    }

    private static PlacedSupport of(PlacedUnit host, Situation situation, Support support) {
        Pose pose = host.pose(situation);
        Box face = pose.apply(
                support.area().at(support.height(), support.height()),
                host.item().size());
        return new PlacedSupport(
                host,
                support.name(),
                Rect.of(face),
                face.z0(),
                support.under(),
                support.ratingKg(),
                support.pullOutN(),
                support.shearN());
    }

    /** A flat cuboid for showing it. */
    public Box box() {
        return area.at(level, level);
    }
}
