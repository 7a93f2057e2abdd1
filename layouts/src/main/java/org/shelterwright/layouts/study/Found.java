package org.shelterwright.layouts.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;

/**
 * What a fit finds for a brief: where everything is, how wires are laid, in which order all is brought in. The brief and the catalog
 * entries are not in it.
 *
 * @param placements of units, in the order of the brief
 * @param routes of wires, in the order of the brief
 * @param boltDown {@code null} if no order was found
 * @param pieces what is inside the units, in the order in which it was stowed
 * @param loads of a journey, with what stands on them and holds it; empty if a brief was fitted
 */
public record Found(
        List<Placement> placements,
        List<Route> routes,
        @Nullable BoltDownOrder boltDown,
        List<PiecePlace> pieces,
        List<Load> loads) {
    /** Nothing is placed. */
    public static final Found NONE = new Found(List.of(), List.of(), null, List.of(), List.of());

    public Found {
        placements = List.copyOf(placements);
        routes = List.copyOf(routes);
        pieces = List.copyOf(pieces);
        loads = List.copyOf(loads);
    }

    public static Found of(Layout layout) {
        return new Found(
                List.copyOf(layout.placements().values()),
                List.copyOf(layout.routes().values()),
                layout.boltDown(),
                List.copyOf(layout.contents().places().values()),
                List.of());
    }

    /** What a planner found for a journey. */
    public static Found of(Journey journey) {
        return new Found(List.of(), List.of(), null, List.of(), journey.loads());
    }

    /**
     * The layout of a start with all this.
     *
     * @throws IllegalArgumentException if it names units, wires or pieces that the start lacks
     */
    Layout onto(Layout start) {
        return start.withPlacements(by(placements, Placement::unit))
                .withRoutes(by(routes, Route::wire))
                .withContents(start.contents().withPlaces(by(pieces, PiecePlace::piece)))
                .withBoltDown(boltDown);
    }

    private static <T> Map<String, T> by(List<T> things, Function<T, String> id) {
        Map<String, T> map = new LinkedHashMap<>();
        things.forEach(one -> map.put(id.apply(one), one));
        return map;
    }
}
