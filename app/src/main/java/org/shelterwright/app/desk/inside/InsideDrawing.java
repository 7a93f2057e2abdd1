package org.shelterwright.app.desk.inside;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.layouts.edit.Edit;
import org.shelterwright.layouts.inside.Held;

/** How an opened inside lies on its pane, and what a pointer does there. Places on the pane are mm of the drawing model. */
interface InsideDrawing {
    List<Shape> shapes();

    /** The rectangles in which a piece is seen, one in each view. */
    List<Bounds> bounds(Held held);

    /** The piece that is seen at a place. */
    Optional<Held> pieceAt(Spot spot);

    /**
     * What a drag of a piece would change.
     *
     * @param piece id of a piece in here, or of one without a place
     * @param from where it was taken; {@code null} if it comes from outside
     * @param to where the pointer is
     * @return empty if it cannot go there
     */
    Optional<Edit> dragged(String piece, @Nullable Spot from, Spot to);
}
