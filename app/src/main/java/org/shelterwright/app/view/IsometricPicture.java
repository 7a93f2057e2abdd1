package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.scene.Scene;

/** Composes pictures of a layout seen from a corner. */
public final class IsometricPicture {

    /** Width of a picture on paper (mm). */
    public static final double WIDTH = 400;

    /** Height of a picture on paper (mm). */
    public static final double HEIGHT = 280;

    private static final double MARGIN = 14;
    private static final double KEY = 2.9;

    private final Typeface typeface;

    public IsometricPicture(Typeface typeface) {
        this.typeface = typeface;
    }

    /** A picture of a scene in a situation, with its marks in space drawn over it. */
    public PictureSheet of(Scene scene, Situation situation, Axonometry view, Caption caption, List<CentreMark> marks) {
        PictureModel model = PictureModel.of(scene, situation, view, true);
        Bounds area = new Bounds(MARGIN, MARGIN + 12, WIDTH - MARGIN, HEIGHT - MARGIN - 8);
        Projection projection = Projection.fitting(view, model.points(), area);
        Naming naming = new Naming(typeface, projection, WIDTH, HEIGHT, model);
        naming.name(scene.units(), UnitNumbers.of(scene));
        List<Shape> over = new ArrayList<>();
        over.add(new Group("cut away with the roof", cutAway(model, projection)));
        over.add(new Group("cables", Cables.of(scene, projection::spot)));
        over.add(new Group("names", naming.shapes()));
        marks.forEach(mark -> over.add(new Group("centre of mass", mark.shapes(projection, typeface))));
        over.add(new Group("axes", new AxesFigure(view).shapes(new Spot(MARGIN + 14, HEIGHT - MARGIN - 14))));
        over.add(new Group("captions", captions(caption, naming.key())));
        return new PictureSheet(caption.title() + ", " + caption.subtitle(), WIDTH, HEIGHT, projection, model, over);
    }

    private static List<Shape> cutAway(PictureModel model, Projection projection) {
        List<Shape> shapes = new ArrayList<>();
        for (Block block : model.cutAway()) {
            for (Trace edge : BlockFaces.edges(block, projection.view())) {
                shapes.add(new Lines(List.of(projection.spots(edge.points())), Weights.CUT_AWAY));
            }
        }
        return shapes;
    }

    private List<Shape> captions(Caption caption, Map<Integer, String> key) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(text(caption.title(), new Spot(MARGIN, MARGIN + 3), 4.6, Weight.SEMIBOLD, Role.TEXT, Align.START));
        shapes.add(
                text(caption.subtitle(), new Spot(MARGIN, MARGIN + 8.6), 3.2, Weight.REGULAR, Role.MUTED, Align.START));
        shapes.add(
                text(caption.foot(), new Spot(WIDTH - MARGIN, HEIGHT - 6), 2.5, Weight.REGULAR, Role.MUTED, Align.END));
        double y = MARGIN + 3;
        for (Map.Entry<Integer, String> entry : key.entrySet()) {
            shapes.add(text(
                    entry.getKey() + "  " + entry.getValue(),
                    new Spot(WIDTH - MARGIN, y),
                    KEY,
                    Weight.REGULAR,
                    Role.TEXT,
                    Align.END));
            y += KEY * 1.5;
        }
        return shapes;
    }

    private static Label text(String text, Spot at, double size, Weight weight, Role role, Align align) {
        return new Label(text, at, size, weight, align, 0, role.colour());
    }
}
