package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.desk.space.solid.Thing;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.journey.PieceTint;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.Tint;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.Shade;
import org.shelterwright.app.view.Trace;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Wheel;

/** A piece on its car as a thing of the scene: its solids, its wheels, boards on crates. */
final class PieceLook {
    private static final int RADIUS = 420_000;
    private static final int TYRE = 250_000;
    private static final int BOARD = 300_000;
    private static final Pen BOARDS = Pen.of(0.18, Role.EDGE.colour().with(0.5));

    private PieceLook() {}

    static Thing of(PlacedPiece piece) {
        List<Block> blocks = new ArrayList<>();
        List<Box> solids = piece.solids();
        for (int i = 0; i < solids.size(); i++) {
            if (piece.shape().wheeled()
                    && solids.get(i).z0() == piece.pose().at().z()) {
                continue; // The room of a wheel, which is drawn round.
            }
            List<Trace> boards = piece.shape().crate() == null ? List.of() : boards(solids.get(i));
            blocks.add(new Block(piece.id(), solids.get(i), Shade.of(PieceTint.of(piece, i)), boards));
        }
        RoundLook wheels = new RoundLook();
        Size size = piece.shape().size();
        for (Wheel wheel : piece.shape().wheels()) {
            if (wheel.support()) {
                continue;
            }
            int radius = Math.min(RADIUS, Math.max(200_000, size.z() / 4));
            for (int side : new int[] {-1, 1}) {
                wheels.wheel(
                        new Point(wheel.x(), wheel.y() + side * wheel.track() / 2, radius),
                        radius,
                        TYRE,
                        Tint.RUBBER,
                        place -> piece.pose().apply(place, size));
            }
        }
        return new Thing(piece.id(), blocks, wheels.facets(), wheels.traces());
    }

    /** Lines between the boards on the upright sides of a crate. */
    private static List<Trace> boards(Box box) {
        List<Trace> lines = new ArrayList<>();
        for (int z = box.z0() + BOARD; z < box.z1() - BOARD / 2; z += BOARD) {
            lines.add(new Trace(
                    List.of(
                            new Point(box.x0(), box.y0(), z),
                            new Point(box.x1(), box.y0(), z),
                            new Point(box.x1(), box.y1(), z),
                            new Point(box.x0(), box.y1(), z),
                            new Point(box.x0(), box.y0(), z)),
                    BOARDS));
        }
        return lines;
    }
}
