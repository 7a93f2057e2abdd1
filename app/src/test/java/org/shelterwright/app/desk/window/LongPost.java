package org.shelterwright.app.desk.window;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.shelterwright.app.desk.hand.HandPost;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.DrillZone;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/** A layout of 60 units to measure with: the post of the tests, with a second one, and part of a third, before it. */
final class LongPost {
    private static final int UNITS = 60;

    private LongPost() {}

    static Layout of() {
        Layout post = HandPost.layout();
        int length = post.body().inside().x();
        List<UnitSpec> units = new ArrayList<>();
        Map<String, Placement> placements = new LinkedHashMap<>();
        for (int part = 0; units.size() < UNITS; part++) {
            Point shift = new Point(part * length, 0, 0);
            String end = part == 0 ? "" : "-" + (part + 1);
            for (UnitSpec unit : post.brief().units()) {
                Placement placement = post.placements().get(unit.id());
                // Of the part that is cut off, nothing whose host may be missing.
                boolean cut = (part + 1) * post.brief().units().size() > UNITS;
                boolean stands =
                        placement != null && !(cut && placement.station().host() != null);
                if (units.size() < UNITS && stands) {
                    String id = unit.id() + end;
                    units.add(new UnitSpec(id, unit.name() + end.replace('-', ' '), unit.item(), unit.group()));
                    placements.put(id, Placement.of(id, moved(placement.station(), shift, end)));
                }
            }
        }
        Brief old = post.brief();
        Brief brief = Brief.named("long-post", "Long Post", old.body())
                .units(units)
                .crew(old.crew())
                .ruleSets(old.ruleSets())
                .limits(old.limits())
                .build();
        Map<String, Item> items = post.parts().items();
        int parts = (UNITS + old.units().size() - 1) / old.units().size();
        return Layout.empty(brief, new Parts(body(post.body(), parts), null, null, items))
                .withPlacements(placements);
    }

    private static Place moved(Place place, Point shift, String end) {
        String host = place.host();
        return new Place(
                place.surface(), host == null ? null : host + end, place.pose().moved(shift));
    }

    private static Body body(Body one, int parts) {
        Size inside = one.inside();
        int more = (parts - 1) * inside.x();
        return new Body(
                one.id(),
                one.name(),
                new Size(inside.x() + more, inside.y(), inside.z()),
                longer(one.outside(), more),
                repeated(
                        one.intrusions(),
                        parts,
                        inside.x(),
                        shift -> box -> new Intrusion(box.name(), box.box().moved(shift))),
                one.openings(),
                repeated(
                        one.grids(),
                        parts,
                        inside.x(),
                        shift -> grid -> new HoleGrid(
                                grid.name(),
                                grid.surface(),
                                grid.first().plus(shift),
                                grid.along(),
                                grid.pitch(),
                                grid.count(),
                                grid.rowPitch(),
                                grid.rows(),
                                grid.threads(),
                                grid.strength())),
                repeated(
                        one.drillZones(),
                        parts,
                        inside.x(),
                        shift -> zone -> new DrillZone(
                                zone.name(),
                                zone.surface(),
                                zone.area().moved(shift),
                                zone.threads(),
                                zone.strength())),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                one.tare(),
                one.grossRatingKg(),
                one.insulation(),
                null);
    }

    private static Box longer(Box box, int more) {
        return new Box(box.x0(), box.y0(), box.z0(), box.x1() + more, box.y1(), box.z1());
    }

    private interface Shifting<T> {
        UnaryOperator<T> by(Point shift);
    }

    private static <T> List<T> repeated(List<T> all, int parts, int length, Shifting<T> shifting) {
        List<T> repeated = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            UnaryOperator<T> shift = shifting.by(new Point(part * length, 0, 0));
            all.forEach(one -> repeated.add(shift.apply(one)));
        }
        return repeated;
    }
}
