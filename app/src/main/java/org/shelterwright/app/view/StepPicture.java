package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.Scene;

/** A picture of one step: what is in already, the unit that comes, its way and its dimensions. */
public final class StepPicture {
    /** Width on paper (mm). */
    public static final double WIDTH = 180;

    /** Usual height on paper (mm). */
    public static final double HEIGHT = 88;

    private static final double MARGIN = 5;
    private static final double TEXT = 3.3;
    private static final int MOST_HOLES = 500;
    private static final Pen GHOST = new Pen(0.35, Role.ACCENT.colour(), LineType.DASHED);
    private static final Pen ROUTE = Pen.of(0.8, Role.ACCENT.colour());
    private static final Pen UNDER_ROUTE = Pen.of(2, Role.PANEL.colour());
    private static final Pen MEASURE = Pen.of(0.45, Role.TEXT.colour());

    private final Typeface typeface;

    public StepPicture(Typeface typeface) {
        this.typeface = typeface;
    }

    /**
     * Draws a step.
     *
     * @param scene with the units that are in, the marked one included
     * @param numbers of the steps, by unit id
     * @param height on paper (mm)
     */
    public Drawing of(
            String title, Scene scene, Axonometry view, Marking marking, Map<String, Integer> numbers, double height) {
        PictureModel model = plain(PictureModel.of(scene, Situation.ON_STATION, view, false));
        List<Point> points = new ArrayList<>(model.points());
        marking.ghosts().forEach(ghost -> ghost.forEach(box -> points.addAll(Block.corners(box))));
        Bounds area = new Bounds(MARGIN, MARGIN, WIDTH - MARGIN, height - MARGIN);
        Projection projection = Projection.fitting(view, points, area);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(new Bounds(0, 0, WIDTH, height), Role.VIEW.colour(), null));
        shapes.addAll(new OrderedPainting(projection).shapes(model));
        Naming naming = new Naming(typeface, projection, WIDTH, height, model);
        naming.name(
                scene.units().stream()
                        .filter(unit -> !unit.id().equals(marking.unit()))
                        .toList(),
                numbers);
        shapes.add(new Group("names", naming.shapes()));
        shapes.add(new Group("way in", ghosts(marking, projection)));
        shapes.add(new Group("unit", unit(model, marking, projection)));
        shapes.add(new Group("route", route(marking, projection)));
        shapes.add(new Group("dimensions", measures(marking, projection)));
        shapes.add(new Group("axes", new AxesFigure(view).shapes(new Spot(WIDTH - 20, height - 8))));
        return new Drawing(title, WIDTH, height, shapes);
    }

    /** Without the holes of a raster, which are too many to be told apart here. */
    private static PictureModel plain(PictureModel model) {
        List<Trace> holes = model.traces().stream()
                .filter(trace -> trace.pen().equals(Weights.RAIL))
                .toList();
        if (holes.size() <= MOST_HOLES) {
            return model;
        }
        List<Trace> kept = model.traces().stream()
                .filter(trace -> !trace.pen().equals(Weights.RAIL))
                .toList();
        return new PictureModel(model.ground(), model.shell(), model.facets(), kept, model.blocks(), model.cutAway());
    }

    private static List<Shape> ghosts(Marking marking, Projection projection) {
        List<Shape> shapes = new ArrayList<>();
        for (List<Box> ghost : marking.ghosts()) {
            for (Box box : ghost) {
                for (Face face : Block.seen(projection.view())) {
                    shapes.add(new Polygon(
                            projection.spots(Block.corners(box, face)),
                            Role.ACCENT.colour().with(0.1),
                            GHOST));
                }
            }
        }
        return shapes;
    }

    /** The marked unit again, over all else, with edges that stand out on paper without colour too. */
    private static List<Shape> unit(PictureModel model, Marking marking, Projection projection) {
        List<Shape> shapes = new ArrayList<>();
        List<Block> own = new ArrayList<>();
        model.blocks().stream()
                .filter(block -> block.owner().equals(marking.unit()))
                .forEach(own::add);
        model.cutAway().stream()
                .filter(block -> block.owner().equals(marking.unit()))
                .forEach(own::add);
        for (Pen pen : List.of(Pen.of(2, Role.PANEL.colour()), Pen.of(0.95, Role.ACCENT.colour()))) {
            for (Block block : own) {
                for (Face face : Block.seen(projection.view())) {
                    shapes.add(new Polygon(projection.spots(Block.corners(block.box(), face)), null, pen));
                }
            }
        }
        for (Block block : new BackToFront(projection).order(own)) {
            for (Facet facet : BlockFaces.facets(block, projection.view())) {
                shapes.add(new Polygon(
                        projection.spots(facet.corners()),
                        facet.colour().mixed(Role.ACCENT.colour(), 0.16),
                        Pen.of(0.35, Role.ACCENT.colour())));
            }
        }
        return shapes;
    }

    private static List<Shape> route(Marking marking, Projection projection) {
        List<Spot> line = projection.spots(marking.route());
        List<Shape> shapes = new ArrayList<>();
        if (line.size() < 2) {
            return shapes;
        }
        shapes.add(new Lines(List.of(line), UNDER_ROUTE));
        shapes.add(new Lines(List.of(line), ROUTE));
        Spot end = line.get(line.size() - 1);
        Spot before = line.get(line.size() - 2);
        double length = Math.max(1e-6, before.distance(end));
        double ux = (end.x() - before.x()) / length;
        double uy = (end.y() - before.y()) / length;
        shapes.add(new Polygon(
                List.of(
                        end,
                        end.plus(-3 * ux - 1.2 * uy, -3 * uy + 1.2 * ux),
                        end.plus(-3 * ux + 1.2 * uy, -3 * uy - 1.2 * ux)),
                Role.ACCENT.colour(),
                null));
        for (int i = 0; i < line.size() - 1; i++) {
            Spot at = line.get(i);
            shapes.add(new Circle(at, 2.2, Role.ACCENT.colour(), Pen.of(0.4, Role.PANEL.colour())));
            shapes.add(label(String.valueOf((char) ('a' + i)), at.plus(0, 1.1), Role.ON_ACCENT, Weight.SEMIBOLD, TEXT));
        }
        return shapes;
    }

    private List<Shape> measures(Marking marking, Projection projection) {
        List<Shape> shapes = new ArrayList<>();
        for (Marking.Measure measure : marking.measures()) {
            Spot from = projection.spot(measure.from());
            Spot to = projection.spot(measure.to());
            shapes.add(Lines.of(Pen.of(1.5, Role.PANEL.colour()), from, to));
            shapes.add(Lines.of(MEASURE, from, to));
            shapes.add(new Circle(from, 0.75, Role.TEXT.colour(), null));
            shapes.add(new Circle(to, 0.75, Role.TEXT.colour(), null));
        }
        List<Bounds> taken = new ArrayList<>();
        for (Marking.Measure measure : marking.measures()) {
            Spot middle = projection.spot(measure.from()).towards(projection.spot(measure.to()), 0.5);
            double width = typeface.width(measure.text(), TEXT, Weight.SEMIBOLD) + 2.6;
            Bounds box = Bounds.around(middle, width, 5);
            while (taken.stream().anyMatch(box::overlaps)) {
                box = box.moved(0, 1);
            }
            taken.add(box);
            shapes.add(Polygon.of(box, Role.RAISED.colour(), Pen.of(0.3, Role.TEXT.colour())));
            shapes.add(label(measure.text(), box.centre().plus(0, 1.15), Role.TEXT, Weight.SEMIBOLD, TEXT));
        }
        return shapes;
    }

    private static Label label(String text, Spot at, Role role, Weight weight, double size) {
        return new Label(text, at, size, weight, Align.MIDDLE, 0, role.colour());
    }
}
