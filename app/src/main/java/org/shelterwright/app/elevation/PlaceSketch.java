package org.shelterwright.app.elevation;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.ledger.stowage.FilledPlace;

/** A stowage place seen from above and from its front, with the pieces in it by their codes. Not to scale between places. */
public final class PlaceSketch {
    private static final double TEXT = 1.5;

    private final Codes codes;
    private final FilledPlace place;

    public PlaceSketch(Codes codes, FilledPlace place) {
        this.codes = codes;
        this.place = place;
    }

    /** Both views within a frame on paper (mm). */
    public List<Shape> shapes(Bounds paper) {
        double half = paper.width() / 2;
        List<Shape> shapes = new ArrayList<>();
        Bounds left = new Bounds(paper.x0(), paper.y0(), paper.x0() + half - 3, paper.y1());
        Bounds right = new Bounds(paper.x0() + half + 3, paper.y0(), paper.x1(), paper.y1());
        shapes.addAll(view(left, Axis.X, "from above"));
        shapes.addAll(view(right, Axis.Z, "from the front"));
        return shapes;
    }

    private List<Shape> view(Bounds paper, Axis up, String title) {
        return new PlaceView(place.stowage(), paper, up, TEXT)
                .shapes(title, place.pieces(), piece -> codes.piece(piece.id()));
    }
}
