package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Tray;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.TrayPath;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.drop.Slate;

/**
 * What routing keeps from scene to scene, as long as brief and catalog entries stay: the tables of the trays, and runs outside
 * trays with what they depend on. It changes no answer, only the time that it takes. Safe for several threads.
 */
final class RouteMemory {
    private final Body body;
    private final List<TrayPath> trays = new ArrayList<>();
    private final List<Meeting> meetings = new ArrayList<>();
    private final Map<CableClass, TrayTable> tables = new ConcurrentHashMap<>();
    private final DropMemory drops = new DropMemory();
    private final Queue<Slate> slates = new ConcurrentLinkedQueue<>();

    /** Where two trays meet, as stations of both. */
    record Meeting(int a, int atA, int b, int atB) {}

    private RouteMemory(Scene scene) {
        this.body = scene.body();
        for (Tray tray : body.trays()) {
            trays.add(new TrayPath(tray));
        }
        for (int a = 0; a < trays.size(); a++) {
            for (int b = a + 1; b < trays.size(); b++) {
                meet(a, b);
            }
        }
    }

    static RouteMemory of(Scene scene) {
        return scene.steady(RouteMemory.class, RouteMemory::new);
    }

    /** All trays of the body, in its order. */
    List<TrayPath> trays() {
        return trays;
    }

    List<Meeting> meetings() {
        return meetings;
    }

    TrayTable table(CableClass cableClass) {
        return tables.computeIfAbsent(cableClass, one -> new TrayTable(body, one));
    }

    DropMemory drops() {
        return drops;
    }

    /** Something to search on, to be given back. */
    Slate slate() {
        Slate slate = slates.poll();
        return slate == null ? new Slate() : slate;
    }

    void giveBack(Slate slate) {
        slates.add(slate);
    }

    private void meet(int a, int b) {
        List<Point> pathA = trays.get(a).tray().path();
        List<Point> pathB = trays.get(b).tray().path();
        List<Point> candidates = new ArrayList<>(pathA);
        candidates.addAll(pathB);
        candidates.addAll(Crossings.of(pathA, pathB));
        for (Point point : candidates.stream().distinct().toList()) {
            int atA = trays.get(a).stationOf(point);
            int atB = trays.get(b).stationOf(point);
            if (atA >= 0 && atB >= 0) {
                meetings.add(new Meeting(a, atA, b, atB));
            }
        }
    }
}
