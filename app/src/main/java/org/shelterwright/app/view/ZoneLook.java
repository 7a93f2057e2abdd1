package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.shelterwright.app.drawing.Hatch;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;

/** How clear zones lie on the floor of a picture: an outline, a light wash, and a hatch by purpose. */
public final class ZoneLook {

    /** Just above the floor, so that a patch and the floor do not share a plane. */
    private static final int ABOVE = Lengths.MM;

    private static final double WASH = 0.07;

    private final List<Facet> facets = new ArrayList<>();
    private final List<Trace> traces = new ArrayList<>();

    /** Adds all zones of a unit that begin below a person's waist. */
    void add(PlacedUnit unit, Situation situation) {
        add(unit, situation, purpose -> true);
    }

    /** Adds those zones of a unit that begin below a person's waist and have a purpose that is asked for. */
    public void add(PlacedUnit unit, Situation situation, Predicate<Purpose> asked) {
        for (PlacedZone zone : unit.zones(situation)) {
            if (zone.box().z0() < Lengths.M && asked.test(zone.purpose())) {
                add(zone);
            }
        }
    }

    public List<Facet> facets() {
        return facets;
    }

    public List<Trace> traces() {
        return traces;
    }

    private void add(PlacedZone zone) {
        Box b = zone.box();
        List<Point> ring = List.of(
                new Point(b.x0(), b.y0(), ABOVE),
                new Point(b.x1(), b.y0(), ABOVE),
                new Point(b.x1(), b.y1(), ABOVE),
                new Point(b.x0(), b.y1(), ABOVE),
                new Point(b.x0(), b.y0(), ABOVE));
        if (zone.purpose() != Purpose.SWING) {
            facets.add(new Facet(ring.subList(0, 4), Role.ZONE.colour().with(WASH)));
            hatch(ring.subList(0, 4), zone.purpose());
        }
        traces.add(new Trace(ring, Weights.ZONE.with(LineType.LONG_DASH_DOUBLE_DOT)));
    }

    private void hatch(List<Point> ring, Purpose purpose) {
        List<Spot> floor =
                ring.stream().map(p -> new Spot(p.x() * 1e-3, -p.y() * 1e-3)).toList();
        for (List<Spot> line : new Hatch(floor, angle(purpose), pitch(purpose), Weights.ZONE_HATCH).lines()) {
            traces.add(new Trace(line.stream().map(ZoneLook::point).toList(), Weights.ZONE_HATCH));
        }
    }

    /** Angle of the hatch of a purpose, against the x axis (degrees). */
    static double angle(Purpose purpose) {
        return switch (purpose) {
            case SERVICE -> -45;
            case AIR -> 90;
            case SEAT, EXIT, SWING -> 45;
        };
    }

    /** Pitch of the hatch of a purpose, on the floor (mm). */
    static double pitch(Purpose purpose) {
        return purpose == Purpose.SERVICE ? 55 : 75;
    }

    private static Point point(Spot spot) {
        return new Point((int) Math.round(spot.x() * 1e3), (int) Math.round(-spot.y() * 1e3), ABOVE);
    }
}
