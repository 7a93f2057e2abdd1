package org.shelterwright.layouts.cable;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Tray;
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
