package org.shelterwright.layouts.cable;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * The wires of a brief in a layout, with their ends, cables and routes. Cost: linear in the wires; what follows from the routes
 * alone is kept while they stay. Immutable.
 */
public final class CableNet {
    private final Scene scene;
    private final RouteSheet sheet;
    private final List<LaidWire> wires = new ArrayList<>();

    private CableNet(Scene scene) {
        this.scene = scene;
        this.sheet = RouteSheets.of(scene);
        scene.brief().wires().forEach(wire -> wires.add(laid(wire)));
    }

    /** The net of a scene, kept with it. */
    public static CableNet of(Scene scene) {
        return scene.derived(CableNet.class, CableNet::new);
    }

    /** In the order of the brief. */
    public List<LaidWire> wires() {
        return wires;
    }

    public Optional<LaidWire> wire(String id) {
        return wires.stream().filter(one -> one.wire().id().equals(id)).findFirst();
    }

    /** What follows from the routes alone. */
    public RouteSheet sheet() {
        return sheet;
    }

    /**
     * Pairs of wires that would run along each other, nearer than they should.
     *
     * @param routes all routes as they would be
     * @param among wires of which at least one is to be in a pair
     */
    public List<Beside> besides(Collection<Route> routes, Set<String> among) {
        return RouteSheets.besides(scene, routes, among);
    }

    /** What a wire carries. */
    public WireDuty duty(LaidWire wire) {
        return WireDuties.of(scene, wire.wire());
    }

    /** The wires that end at a unit: those to route again when it moves. */
    public List<LaidWire> of(String unit) {
        return wires.stream().filter(wire -> wire.units().contains(unit)).toList();
    }

    private LaidWire laid(Wire wire) {
        WireEnd from = WireEnd.of(scene, wire.from()).orElse(null);
        WireEnd to = WireEnd.of(scene, wire.to()).orElse(null);
        Map<String, Cable> cables = scene.layout().parts().cables();
        Route route = scene.layout().routes().get(wire.id());
        RouteShape shape = sheet.shape(wire.id()).orElse(null);
        Cable cable = cables.get(route != null ? route.cable() : wire.type() == null ? "" : wire.type());
        String gap = gap(wire, from, to, shape);
        long cut = gap == null && shape != null ? cutLength(wire, from, to, shape) : -1;
        return new LaidWire(wire, from, to, cable, shape, gap, cut);
    }

    private long cutLength(Wire wire, @Nullable WireEnd from, @Nullable WireEnd to, RouteShape shape) {
        boolean goesOutside = from != null && from.outside() || to != null && to.outside();
        Integer outside = wire.outside();
        if (goesOutside && outside == null) {
            return -1;
        }
        double end = 1000 * scene.rules().valueOr(Figure.CABLE_SLACK_END, 0);
        double share = scene.rules().valueOr(Figure.CABLE_SLACK_SHARE, 0);
        long laid = shape.length() + (outside == null ? 0 : outside);
        return CutLength.of(laid, end, share);
    }

    private @Nullable String gap(Wire wire, @Nullable WireEnd from, @Nullable WireEnd to, @Nullable RouteShape shape) {
        String name = "Wire " + wire.id();
        if (from == null || to == null) {
            return name + " ends at something that is not there: " + (from == null ? wire.from() : wire.to())
                    + ". Correct it in the brief.";
        }
        for (WireEnd end : List.of(from, to)) {
            if (end.at() == null && !end.outside()) {
                return name + " ends at " + end.name() + ", which is not placed yet.";
            }
        }
        if (shape == null) {
            return name + " from " + from.name() + " to " + to.name() + " has no route.";
        }
        if (shape.fault() != null) {
            return "The route of wire " + wire.id() + " does not hold: " + shape.fault() + ".";
        }
        if (shape.path().isEmpty()) {
            return from.outside() && to.outside()
                    ? null
                    : "The route of wire " + wire.id() + " has no run inside the body.";
        }
        String begins = reaches(wire, from, shape, shape.path().get(0));
        return begins != null
                ? begins
                : reaches(wire, to, shape, shape.path().get(shape.path().size() - 1));
    }

    private @Nullable String reaches(Wire wire, WireEnd end, RouteShape shape, Point there) {
        Point at = end.at();
        String name = end.name();
        if (end.outside()) {
            String panel = shape.route().panel();
            var entry = scene.body().entryPanels().stream()
                    .filter(one -> one.name().equals(panel))
                    .findFirst();
            if (entry.isEmpty()) {
                return "The route of wire " + wire.id() + " goes outside by no entry panel.";
            }
            at = WireEnd.middle(entry.get());
            name = entry.get().name();
        }
        if (at == null || at.equals(there) || joins(wire, there)) {
            return null;
        }
        return "The route of wire " + wire.id() + " ends " + Lengths.format(Bends.distance(at, there)) + " mm from "
                + name + ".";
    }

    /** Whether a wire of a bus ends on one that stands before it in the brief. */
    private boolean joins(Wire wire, Point there) {
        if (wire.bus() == null) {
            return false;
        }
        for (Wire other : scene.brief().wires()) {
            if (other.id().equals(wire.id())) {
                return false;
            }
            if (wire.bus().equals(other.bus())) {
                List<Point> path = sheet.shape(other.id()).map(RouteShape::path).orElse(List.of());
                for (int i = 1; i < path.size(); i++) {
                    if (Beside.span(path.get(i - 1), path.get(i)).contains(there)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
