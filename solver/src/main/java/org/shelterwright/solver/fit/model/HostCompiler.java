package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Support;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.solver.fit.places.AnchorSet;

/** Compiles the ways to mount one item on or under the supports of another. */
final class HostCompiler {
    private HostCompiler() {}

    /**
     * Compiles the options of a guest on one possible host.
     *
     * @param hostSlot slot of the host that is there whenever the guest is
     * @param pin what of the guest stays as it is in {@code kept}; the host is then pinned alike
     * @param kept place of the guest so far; {@code null} if it has none
     * @param host place of the host so far; {@code null} if it has none
     */
    static List<Option> on(
            Item guest, Item hostItem, int hostSlot, String hostId, Pin pin, @Nullable Place kept, @Nullable Place host) {
        List<Option> options = new ArrayList<>();
        if (kept != null && pin.turn() && !hostId.equals(kept.host())) {
            return options;
        }
        for (int number = 0; number < hostItem.supports().size(); number++) {
            Support support = hostItem.supports().get(number);
            Surface surface = support.under() ? Surface.UNDER_UNIT : Surface.ON_UNIT;
            if (!guest.mounting().surfaces().contains(surface)
                    || kept != null && pin.turn() && kept.surface() != surface) {
                continue;
            }
            for (QuarterTurn turn : OptionCompiler.turns(guest)) {
                if (kept == null || !pin.turn() || kept.pose().yaw() == turn) {
                    AnchorSet[] anchors = anchors(guest, turn, hostItem, support, pin, kept, host);
                    if (anchors != null) {
                        var berth = new Option.Berth(hostSlot, number, support.ratingKg());
                        options.add(OptionCompiler.make(guest, surface, turn, anchors, berth));
                    }
                }
            }
        }
        return options;
    }

    private static AnchorSet @Nullable [] anchors(
            Item guest,
            QuarterTurn turn,
            Item hostItem,
            Support support,
            Pin pin,
            @Nullable Place kept,
            @Nullable Place host) {
        Size size = turn.apply(guest.size());
        AnchorSet[] sets = new AnchorSet[QuarterTurn.values().length];
        boolean any = false;
        for (QuarterTurn hostTurn : QuarterTurn.values()) {
            Box domain = domain(size, hostTurn, hostItem, support);
            if (domain != null && kept != null && host != null) {
                Point relative = kept.pose().at().minus(host.pose().at());
                domain = OptionCompiler.pinned(domain, pin, relative);
            }
            sets[hostTurn.ordinal()] = AnchorSet.of(Axis.Z, domain == null ? List.of() : List.of(domain));
            any |= domain != null && hostItem.turns().contains(hostTurn);
        }
        return any ? sets : null;
    }

    private static @Nullable Box domain(Size guest, QuarterTurn hostTurn, Item hostItem, Support support) {
        int level = support.under() ? support.height() - guest.z() : support.height();
        Box area = hostTurn.apply(support.area().at(0, 0), hostItem.size());
        int x = area.x1() - guest.x();
        int y = area.y1() - guest.y();
        return x < area.x0() || y < area.y0() ? null : new Box(area.x0(), area.y0(), level, x, y, level);
    }
}
