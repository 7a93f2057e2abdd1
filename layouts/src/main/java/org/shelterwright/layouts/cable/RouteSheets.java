package org.shelterwright.layouts.cable;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Tray;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/** Keeps the last sheet of routes for all scenes that come of one another. Safe for several threads. */
final class RouteSheets {
    private final Map<String, TrayPath> trays = new LinkedHashMap<>();
    private final int separation;
    private volatile @Nullable RouteSheet last;

    private RouteSheets(Scene scene) {
        for (Tray tray : scene.body().trays()) {
            trays.put(tray.name(), new TrayPath(tray));
        }
        separation = (int) Math.round(1000 * scene.rules().valueOr(Figure.CABLE_SEPARATION, 0));
    }

    static RouteSheet of(Scene scene) {
        return scene.steady(RouteSheets.class, RouteSheets::new).sheet(scene);
    }

    /** Pairs that would run along each other with other routes, of which at least one is among some wires. */
    static List<Beside> besides(Scene scene, Collection<Route> routes, Set<String> among) {
        RouteSheets sheets = scene.steady(RouteSheets.class, RouteSheets::new);
        RouteSheet now = sheets.sheet(scene);
        List<RouteShape> shapes = new ArrayList<>();
        for (Route route : routes) {
            RouteShape known = now.shape(route.wire()).orElse(null);
            RouteShape shape = known != null && known.route() == route ? known : RouteShape.of(route, sheets.trays);
            if (shape.fault() == null) {
                shapes.add(shape);
            }
        }
        return sheets.separation <= 0
                ? List.of()
                : Beside.of(shapes, among, scene.layout().parts().cables(), sheets.trays, sheets.separation);
    }

    private RouteSheet sheet(Scene scene) {
        RouteSheet before = last;
        if (before != null && before.isOf(scene.layout())) {
            return before;
        }
        RouteSheet made = new RouteSheet(scene.layout(), trays, separation);
        last = made;
        return made;
    }
}
