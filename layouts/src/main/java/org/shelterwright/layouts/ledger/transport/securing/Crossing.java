package org.shelterwright.layouts.ledger.transport.securing;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * No two direct lashings of a car cross, seen from above. Source: TEA Pamphlet 55-19: parallel, not crossed (seen). Other practice
 * crosses the two at the ends of tracked vehicles; accept the row there.
 */
final class Crossing extends LegLimit {
    Crossing() {
        super(
                "lashings-cross",
                "Crossing of lashings",
                Source.seen("TEA Pamphlet 55-19", "lashings are parallel, not crossed, symmetrical"),
                "No lashings cross.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            List<Rope> ropes = Rope.of(leg, load).stream().filter(Rope::direct).toList();
            for (int i = 0; i < ropes.size(); i++) {
                for (int j = i + 1; j < ropes.size(); j++) {
                    Rope a = ropes.get(i);
                    Rope b = ropes.get(j);
                    if (cross(a.top(), a.foot(), b.top(), b.foot())) {
                        rows.add(draft(leg, rows)
                                .units(List.of(
                                        a.lashing().what().get(0),
                                        b.lashing().what().get(0),
                                        load.id()))
                                .mend("Change their anchor points over.")
                                .atMost(
                                        1,
                                        0,
                                        "",
                                        "Lashings " + a.lashing().key() + " and "
                                                + b.lashing().key() + " cross on " + load.name() + "."));
                    }
                }
            }
        }
    }

    /** Whether two lines cross within both, seen from above; meeting at an end is not crossing. */
    static boolean cross(Point a, Point b, Point c, Point d) {
        return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static int side(Point a, Point b, Point p) {
        double area = (b.x() - (double) a.x()) * (p.y() - (double) a.y())
                - (b.y() - (double) a.y()) * (p.x() - (double) a.x());
        return (int) Math.signum(area);
    }
}
