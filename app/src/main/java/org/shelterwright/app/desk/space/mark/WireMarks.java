package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.scene.Scene;

/** Draws the routes of wires that are looked at, over everything, with their ends; the others faintly. */
public final class WireMarks {
    private static final Pen OTHER = Pen.of(0.25, Role.LINES.colour());
    private static final Pen CASING = Pen.of(1.5, Role.PANEL.colour());
    private static final Pen CHOSEN = Pen.of(0.85, Role.ACCENT.colour());

    private WireMarks() {}

    /** Nothing if no wire is chosen. */
    public static List<Shape> of(Glass glass, Scene scene, Set<String> chosen) {
        List<Shape> shapes = new ArrayList<>();
        if (chosen.isEmpty()) {
            return shapes;
        }
        List<List<Spot>> over = new ArrayList<>();
        for (String wire : scene.layout().routes().keySet()) {
            RouteShape shape = CableNet.of(scene).sheet().shape(wire).orElse(null);
            if (shape != null && shape.path().size() > 1) {
                List<Spot> line = glass.spots(shape.path());
                if (chosen.contains(wire)) {
                    over.add(line);
                } else {
                    shapes.add(new Lines(List.of(line), OTHER));
                }
            }
        }
        for (List<Spot> line : over) {
            shapes.add(new Lines(List.of(line), CASING));
        }
        for (List<Spot> line : over) {
            shapes.add(new Lines(List.of(line), CHOSEN));
            for (Spot end : List.of(line.get(0), line.get(line.size() - 1))) {
                shapes.add(new Circle(end, 1.1, Role.ACCENT.colour(), Pen.of(0.4, Role.PANEL.colour())));
            }
        }
        return shapes;
    }
}
