package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.journey.PieceTint;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.Tint;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** The cars of a leg from above, one below the other, at one small true scale. */
final class LoadPicture {
    private static final double GAP = 1;
    private static final Pen EDGE = Pen.of(0.2, Role.EDGE.colour());

    private LoadPicture() {}

    /**
     * The picture.
     *
     * @param focus whose leg is shown; {@code null}: the first
     * @param wide room on paper (mm)
     * @param high room on paper (mm)
     */
    static List<Shape> shapes(JourneyScene scene, @Nullable Focus focus, double wide, double high) {
        LegScene leg = Focus.leg(focus == null ? 1 : focus.leg(), scene).orElse(null);
        List<PlacedLoad> loads = leg == null ? List.of() : leg.outerLoads();
        double longest = loads.stream()
                .mapToInt(load -> load.car().deck().length())
                .max()
                .orElse(1);
        double across =
                loads.stream().mapToInt(load -> load.car().deck().width()).sum();
        double scale = Math.min((wide - 1) / longest, (high - 1 - GAP * loads.size()) / Math.max(1, across));
        List<Shape> shapes = new ArrayList<>();
        double top = 0.5;
        for (PlacedLoad load : loads) {
            double deep = scale * load.car().deck().width();
            shapes.add(Polygon.of(
                    new Bounds(0.5, top, 0.5 + scale * load.car().deck().length(), top + deep),
                    Tint.TIMBER.top(),
                    EDGE));
            for (PlacedPiece piece : load.pieces().stream()
                    .sorted(Comparator.comparingInt(one -> one.box().z1()))
                    .toList()) {
                List<Box> solids = piece.solids();
                for (int i = 0; i < solids.size(); i++) {
                    Box box = solids.get(i);
                    shapes.add(Polygon.of(
                            new Bounds(
                                    0.5 + scale * box.x0(),
                                    top + deep - scale * box.y1(),
                                    0.5 + scale * box.x1(),
                                    top + deep - scale * box.y0()),
                            PieceTint.of(piece, i).top(),
                            EDGE));
                }
            }
            top += deep + GAP;
        }
        return shapes;
    }
}
