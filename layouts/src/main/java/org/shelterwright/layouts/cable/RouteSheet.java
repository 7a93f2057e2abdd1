package org.shelterwright.layouts.cable;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.catalog.body.Tray;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Route;

/**
 * What follows from all routes of a layout together, wherever units stand: shapes, tray fill, cables beside each other. It is
 * made anew only when a route changes. Immutable.
 */
public final class RouteSheet {
    private final List<Route> routes;
    private final Map<String, RouteShape> shapes = new LinkedHashMap<>();
    private final List<TrayUse> uses;
    private final List<Beside> besides;

    RouteSheet(Layout layout, Map<String, TrayPath> trays, int separation) {
        this.routes = List.copyOf(layout.routes().values());
        Map<String, Cable> cables = layout.parts().cables();
        for (Route route : routes) {
            shapes.put(route.wire(), RouteShape.of(route, trays));
        }
        List<RouteShape> sound =
                shapes.values().stream().filter(shape -> shape.fault() == null).toList();
        uses = List.copyOf(TrayUse.of(sound, cables));
        besides = separation > 0 ? List.copyOf(Beside.of(sound, null, cables, trays, separation)) : List.of();
    }

    /** Whether it is of the very routes of a layout. Cost: their number. */
    boolean isOf(Layout layout) {
        if (layout.routes().size() != routes.size()) {
            return false;
        }
        int i = 0;
        for (Route route : layout.routes().values()) {
            if (route != routes.get(i++)) {
                return false;
            }
        }
        return true;
    }

    public Optional<RouteShape> shape(String wire) {
        return Optional.ofNullable(shapes.get(wire));
    }

    /** Every section of a tray with something in it. */
    public List<TrayUse> uses() {
        return uses;
    }

    /** The fullest section of each compartment in use, in the order of the trays of the body. */
    public List<TrayUse> fullest(List<Tray> trays) {
        List<TrayUse> found = new ArrayList<>();
        for (Tray tray : trays) {
            for (int part = 0; part < tray.parts().size(); part++) {
                int number = part;
                uses.stream()
                        .filter(use ->
                                use.part() == number && use.tray().tray().name().equals(tray.name()))
                        .reduce((a, b) -> b.cablesMm2() > a.cablesMm2() ? b : a)
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    /** Pairs of wires that run along each other, nearer than they should. */
    public List<Beside> besides() {
        return besides;
    }
}
