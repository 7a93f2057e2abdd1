package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.desk.space.solid.Thing;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.view.Trace;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.transport.securing.Rope;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** The lashings of a load as a thing of the scene: what lies behind solids is hidden by them. */
final class RopeLook {
    private static final Pen ROPE = Pen.of(0.48, Role.TEXT.colour());

    private RopeLook() {}

    static Thing of(LegScene leg, PlacedLoad load, String id) {
        List<Trace> traces = new ArrayList<>();
        for (Rope rope : Rope.of(leg, load)) {
            List<Point> points = new ArrayList<>(List.of(rope.foot(), rope.top()));
            Point top2 = rope.top2();
            Point foot2 = rope.foot2();
            if (top2 != null && foot2 != null) {
                points.add(top2);
                points.add(foot2);
            }
            traces.add(new Trace(points, ROPE));
        }
        return new Thing(id, List.of(), List.of(), traces);
    }
}
