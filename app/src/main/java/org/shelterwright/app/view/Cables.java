package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.scene.Scene;

/** The routes of wires as lines in the colour of their class. */
public final class Cables {
    private static final double WIDTH = 0.3;

    private Cables() {}

    /**
     * Lines of all routes, drawn over what stands before them, since trays and backs hide most of them.
     *
     * @param spot where a place of the body lies on paper
     */
    public static List<Shape> of(Scene scene, Function<Point, Spot> spot) {
        List<Shape> shapes = new ArrayList<>();
        for (Route route : scene.layout().routes().values()) {
            Cable cable = scene.layout().parts().cables().get(route.cable());
            List<Spot> line = route.path().stream().map(spot).toList();
            if (line.size() > 1) {
                Colour colour = cable == null ? Role.TEXT.colour() : colour(cable.cableClass());
                shapes.add(new Lines(List.of(line), Pen.of(WIDTH, colour)));
            }
        }
        return shapes;
    }

    /** The colour of a class of cables. */
    public static Colour colour(CableClass of) {
        return switch (of) {
            case POWER -> Role.POWER.colour();
            case SIGNAL -> Role.SIGNAL.colour();
            case RADIO_FREQUENCY -> Role.RADIO.colour();
            case FIBRE -> Role.FIBRE.colour();
            case EARTH -> Role.EARTH.colour();
        };
    }
}
