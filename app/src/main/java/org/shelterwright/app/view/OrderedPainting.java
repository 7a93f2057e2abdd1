package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;

/** Turns a picture model into shapes that are painted over each other, from back to front. */
public final class OrderedPainting {

    private final Projection projection;

    public OrderedPainting(Projection projection) {
        this.projection = projection;
    }

    /** The shapes, one group a block, named by its owner. Cost: quadratic in the blocks. */
    public List<Shape> shapes(PictureModel model) {
        List<Shape> shapes = new ArrayList<>();
        List<Shape> room = new ArrayList<>();
        model.ground().forEach(facet -> room.add(shape(facet)));
        model.shell().forEach(block -> addBlock(block, room));
        model.facets().forEach(facet -> room.add(shape(facet)));
        model.traces().forEach(trace -> room.add(shape(trace)));
        shapes.add(new Group("body", room));
        for (Block block : new BackToFront(projection).order(model.blocks())) {
            List<Shape> parts = new ArrayList<>();
            addBlock(block, parts);
            shapes.add(new Group(block.owner().isEmpty() ? "body" : "unit " + block.owner(), parts));
        }
        return shapes;
    }

    private void addBlock(Block block, List<Shape> shapes) {
        BlockFaces.facets(block, projection.view()).forEach(facet -> shapes.add(shape(facet)));
        block.traces().stream().filter(trace -> seen(block, trace)).forEach(trace -> shapes.add(shape(trace)));
        BlockFaces.edges(block, projection.view()).forEach(trace -> shapes.add(shape(trace)));
    }

    /** Whether a line lies on a face that is seen: all of its points on one such face. */
    private boolean seen(Block block, Trace trace) {
        return Block.seen(projection.view()).stream().anyMatch(face -> {
            int at = face.sign() > 0
                    ? block.box().high(face.axis())
                    : block.box().low(face.axis());
            return trace.points().stream().allMatch(point -> point.along(face.axis()) == at);
        });
    }

    private Shape shape(Facet facet) {
        return new Polygon(projection.spots(facet.corners()), facet.colour(), null);
    }

    private Shape shape(Trace trace) {
        return new Lines(List.of(projection.spots(trace.points())), trace.pen());
    }
}
