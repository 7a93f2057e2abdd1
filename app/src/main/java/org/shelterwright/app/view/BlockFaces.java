package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/** The faces of a block that look towards the viewer, and its edges. */
public final class BlockFaces {

    private BlockFaces() {}

    public static List<Facet> facets(Block block, Axonometry view) {
        return Block.seen(view).stream()
                .map(face -> new Facet(
                        Block.corners(block.box(), face), block.shade().of(face)))
                .toList();
    }

    /** Edges between two seen faces, then the heavier ones of the silhouette. */
    public static List<Trace> edges(Block block, Axonometry view) {
        List<Trace> inner = new ArrayList<>();
        List<Trace> outer = new ArrayList<>();
        Face[] faces = Face.values();
        for (int i = 0; i < faces.length; i++) {
            for (int j = i + 1; j < faces.length; j++) {
                int seen = (view.sees(faces[i]) ? 1 : 0) + (view.sees(faces[j]) ? 1 : 0);
                if (faces[i].axis() != faces[j].axis() && seen > 0) {
                    Pen pen = seen == 2 ? Weights.EDGE : Weights.SILHOUETTE;
                    (seen == 2 ? inner : outer).add(new Trace(edge(block.box(), faces[i], faces[j]), pen));
                }
            }
        }
        inner.addAll(outer);
        return inner;
    }

    /** The edge that two faces share. */
    private static List<Point> edge(Box box, Face a, Face b) {
        Point low = at(box, a, at(box, b, box.low()));
        Axis free = null;
        for (Axis axis : Axis.values()) {
            free = axis != a.axis() && axis != b.axis() ? axis : free;
        }
        return free == null ? List.of(low) : List.of(low, low.with(free, box.high(free)));
    }

    private static Point at(Box box, Face face, Point point) {
        return point.with(face.axis(), face.sign() > 0 ? box.high(face.axis()) : box.low(face.axis()));
    }
}
