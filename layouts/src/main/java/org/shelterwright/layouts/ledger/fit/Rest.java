package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * How a unit rests on the support of its host that suits it best.
 *
 * @param gap free height between the two (µm); below zero if the unit stands into it
 * @param beyond greatest length by which its prints reach beyond the support (µm)
 */
public record Rest(PlacedSupport support, int gap, int beyond) {
    /** The best support of the host of a unit; empty if the host is not placed or has no support of that kind. */
    public static Optional<Rest> of(Scene scene, PlacedUnit guest, Situation situation) {
        Place place = guest.place(situation);
        if (place.host() == null) {
            return Optional.empty();
        }
        boolean under = place.surface() == Surface.UNDER_UNIT;
        Rest best = null;
        PlacedUnit host = scene.unit(place.host()).orElse(null);
        if (host != null) {
            List<Rect> prints = prints(guest, situation);
            Box outline = guest.outline(situation);
            for (PlacedSupport support : PlacedSupport.of(host, situation)) {
                if (support.under() == under) {
                    int gap = under ? support.level() - outline.z1() : outline.z0() - support.level();
                    Rest rest = new Rest(support, gap, beyond(support.area(), prints));
                    best = best == null || rest.amiss() < best.amiss() ? rest : best;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** How far the unit is from resting rightly (µm); zero if it does. */
    public int amiss() {
        return Math.max(Math.abs(gap), beyond);
    }

    /**
     * Where the low corner of the unit may be so that all that touches the support lies within it, wherever the unit is
     * now; empty if the support is too small.
     */
    public static Optional<Rect> room(PlacedUnit guest, Situation situation, PlacedSupport support) {
        Rect foot = prints(guest, situation).stream()
                .map(print -> print.at(0, 0))
                .reduce(Box::hull)
                .map(Rect::of)
                .orElse(Rect.of(guest.outline(situation)));
        Point at = guest.pose(situation).at();
        Rect area = support.area();
        int x0 = area.x0() - foot.x0();
        int y0 = area.y0() - foot.y0();
        int x1 = area.x1() - foot.x1();
        int y1 = area.y1() - foot.y1();
        return x0 > x1 || y0 > y1
                ? Optional.empty()
                : Optional.of(new Rect(at.x() + x0, at.y() + y0, at.x() + x1, at.y() + y1));
    }

    /** What touches the support: contact patches or bottoms of solids, or tops of solids under it. */
    private static List<Rect> prints(PlacedUnit guest, Situation situation) {
        Pose pose = guest.pose(situation);
        Size size = guest.item().size();
        if (guest.place(situation).surface() == Surface.ON_UNIT) {
            return guest.item().prints().stream()
                    .map(print -> Rect.of(pose.apply(print.at(0, 0), size)))
                    .toList();
        }
        List<Rect> tops = new ArrayList<>();
        for (Box solid : guest.solids(situation)) {
            if (solid.z1() == guest.outline(situation).z1()) {
                tops.add(Rect.of(solid));
            }
        }
        return tops;
    }

    private static int beyond(Rect area, List<Rect> prints) {
        int most = 0;
        for (Rect print : prints) {
            most = Math.max(most, Math.max(area.x0() - print.x0(), print.x1() - area.x1()));
            most = Math.max(most, Math.max(area.y0() - print.y0(), print.y1() - area.y1()));
        }
        return most;
    }
}
