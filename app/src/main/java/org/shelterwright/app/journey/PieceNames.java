package org.shelterwright.app.journey;

import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** Writes on pieces in drawings of a loaded car: the name where it has room, else the number in the table of positions. */
final class PieceNames {
    private static final double LEAST_NAMED = 18;

    private final Typeface typeface;
    private final PlacedLoad load;
    private final List<Shape> shapes;

    PieceNames(Typeface typeface, PlacedLoad load, List<Shape> shapes) {
        this.typeface = typeface;
        this.load = load;
        this.shapes = shapes;
    }

    /** @param ground of the face, laid under the name so that lines do not cross it */
    void name(PlacedPiece piece, Bounds face, Colour ground) {
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(CarPaper.SMALL), Weight.MEDIUM);
        List<String> lines = wrap.lines(piece.name(), face.width() - 1.6);
        int most = (int) Math.floor((face.height() - 1) / 3.2);
        if (lines.size() > most || face.width() < LEAST_NAMED) {
            number(piece, new Spot(face.centre().x(), face.y0() + 2.5), ground);
            return;
        }
        double y = face.y0() + 3.2;
        for (String line : lines) {
            Label label = Lettering.in(
                    Lettering.of(line, new Spot(face.centre().x(), y), CarPaper.SMALL)
                            .with(Align.MIDDLE)
                            .with(Weight.MEDIUM),
                    Role.ON_TOP.colour());
            double half = typeface.width(label) / 2 + 0.5;
            shapes.add(Polygon.of(
                    new Bounds(face.centre().x() - half, y - 2.3, face.centre().x() + half, y + 0.7), ground, null));
            shapes.add(label);
            y += 3.2;
        }
    }

    /**
     * Its number in the table of positions.
     *
     * @param ground of the face, laid under the number
     */
    void number(PlacedPiece piece, Spot at, Colour ground) {
        Label label = Lettering.in(
                Lettering.bold(Integer.toString(load.pieces().indexOf(piece) + 1), at, CarPaper.SMALL)
                        .with(Align.MIDDLE),
                Role.ON_TOP.colour());
        double half = typeface.width(label) / 2 + 0.3;
        shapes.add(Polygon.of(new Bounds(at.x() - half, at.y() - 2, at.x() + half, at.y() + 0.3), ground, null));
        shapes.add(label);
    }
}
