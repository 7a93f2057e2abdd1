package org.shelterwright.layouts.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.EntryPanel;
import org.shelterwright.catalog.body.Tray;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.layout.Run;

/** Holds the routes of a file against its wires, trays, panels and cables. */
final class RouteReferences {
    private static final int MOST_POINTS = 2_000;
    private static final int FARTHEST = 100 * Lengths.M;

    private final LayoutDocument document;
    private final Map<String, Cable> cables;
    private final Places places;
    private final Findings findings;

    RouteReferences(LayoutDocument document, Map<String, Cable> cables, Places places, Findings findings) {
        this.document = document;
        this.cables = cables;
        this.places = places;
        this.findings = findings;
    }

    /** The routes by wire, as far as they could be taken. */
    Map<String, Route> routes() {
        Map<String, Route> routes = new LinkedHashMap<>();
        Set<String> wires = BriefReferences.ids(document.brief().wires(), Wire::id);
        Body body = document.parts().body().entry();
        Set<String> panels = BriefReferences.ids(body.entryPanels(), EntryPanel::name);
        for (int i = 0; i < document.routes().size(); i++) {
            Route route = document.routes().get(i);
            Places at = places.index(i);
            if (!BriefReferences.known(route.wire(), wires, "wire", at.key("wire"), findings)) {
                continue;
            }
            if (routes.putIfAbsent(route.wire(), route) != null) {
                findings.refuse(
                        at.key("wire"), "The wire \"" + route.wire() + "\" is routed twice. Remove one of the routes.");
            }
            BriefReferences.known(route.cable(), cables.keySet(), "cable", at.key("cable"), findings);
            if (route.panel() != null) {
                BriefReferences.known(route.panel(), panels, "entry panel", at.key("panel"), findings);
            }
            for (int r = 0; r < route.runs().size(); r++) {
                run(route, route.runs().get(r), body.trays(), at.key("runs").index(r));
            }
        }
        return routes;
    }

    private void run(Route route, Run run, List<Tray> trays, Places at) {
        if (run.path().size() > MOST_POINTS) {
            findings.refuse(
                    at.key("path"),
                    "A run of wire \"" + route.wire() + "\" has " + run.path().size() + " points; at most "
                            + MOST_POINTS + " are taken. Leave out those that it passes straight.");
        }
        for (Point point : run.path()) {
            if (Math.max(Math.abs(point.x()), Math.max(Math.abs(point.y()), Math.abs(point.z()))) > FARTHEST) {
                findings.refuse(
                        at.key("path"),
                        "The wire \"" + route.wire()
                                + "\" runs more than 100 m from the body. Lengths are in millimetres: correct it.");
                break;
            }
        }
        String named = run.tray();
        if (named == null) {
            return;
        }
        if (!BriefReferences.known(named, BriefReferences.ids(trays, Tray::name), "tray", at.key("tray"), findings)) {
            return;
        }
        Tray tray = trays.stream()
                .filter(one -> one.name().equals(named))
                .findFirst()
                .orElseThrow();
        int parts = tray.parts().size();
        if (run.compartment() < 0 || run.compartment() >= parts) {
            findings.refuse(
                    at.key("part"),
                    "The wire \"" + route.wire() + "\" lies in compartment " + run.compartment() + " of tray \"" + named
                            + "\", which has " + parts + ", counted from 0. Correct the number.");
        }
    }
}
