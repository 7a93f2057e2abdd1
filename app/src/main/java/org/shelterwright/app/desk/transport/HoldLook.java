package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.desk.space.solid.Thing;
import org.shelterwright.app.look.Tint;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.Shade;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Wheel;

/** Chocks and beams on a deck as a thing of the scene. */
final class HoldLook {
    private static final int CHOCK_LONG = 240_000;
    private static final int CHOCK_WIDE = 220_000;
    private static final int CHOCK_HIGH = 190_000;
    private static final int BEAM = 100_000;

    private final List<Block> blocks = new ArrayList<>();

    private HoldLook() {}

    static Thing of(PlacedLoad load, String id) {
        HoldLook look = new HoldLook();
        for (var block : load.load().blocks()) {
            load.piece(block.what()).ifPresent(piece -> {
                switch (block.way()) {
                    case CHOCKS -> look.chocks(piece);
                    case BEAMS -> block.toward().forEach(face -> look.beam(piece.box(), face));
                    case STOP, SPIGOTS -> {}
                }
            });
        }
        return new Thing(id, look.blocks, List.of(), List.of());
    }

    /** Before and behind each wheel. */
    private void chocks(PlacedPiece piece) {
        for (Wheel wheel : piece.shape().wheels()) {
            if (wheel.support()) {
                continue;
            }
            for (int side : new int[] {-1, 1}) {
                for (int way : new int[] {-1, 1}) {
                    Point middle = new Point(wheel.x() + way * 430_000, wheel.y() + side * wheel.track() / 2, 0);
                    Box box = new Box(
                            middle.x() - CHOCK_LONG / 2,
                            middle.y() - CHOCK_WIDE / 2,
                            0,
                            middle.x() + CHOCK_LONG / 2,
                            middle.y() + CHOCK_WIDE / 2,
                            CHOCK_HIGH);
                    add(piece.pose().apply(box, piece.shape().size()));
                }
            }
        }
    }

    private void beam(Box box, Face face) {
        int z0 = box.z0();
        int z1 = z0 + BEAM;
        switch (face) {
            case FRONT -> add(new Box(box.x1(), box.y0(), z0, box.x1() + BEAM, box.y1(), z1));
            case REAR -> add(new Box(box.x0() - BEAM, box.y0(), z0, box.x0(), box.y1(), z1));
            case LEFT -> add(new Box(box.x0(), box.y1(), z0, box.x1(), box.y1() + BEAM, z1));
            case RIGHT -> add(new Box(box.x0(), box.y0() - BEAM, z0, box.x1(), box.y0(), z1));
            case TOP, BOTTOM -> {}
        }
    }

    private void add(Box box) {
        blocks.add(new Block("", box, Shade.of(Tint.PLY), List.of()));
    }
}
