package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.Aspect;
import org.shelterwright.app.view.Cables;
import org.shelterwright.app.view.Caption;
import org.shelterwright.app.view.FlatView;
import org.shelterwright.app.view.Sheeted;
import org.shelterwright.app.view.UnitNumbers;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** A picture of a layout from above, with names where they fit and ringed references where they do not. */
public final class PlanPicture {

    private static final double WIDTH = 400;
    private static final double MARGIN = 14;
    private static final double HEAD = 16;
    private static final double FOOT = 14;
    private static final double KEY = 34;
    private static final double NAME = 2.1;
    private static final double STEP = 0.7;

    private final Typeface typeface;

    public PlanPicture(Typeface typeface) {
        this.typeface = typeface;
    }

    /** The picture, as wide as all pictures and as high as the body asks for. */
    public Drawing of(Scene scene, Situation situation, Caption caption) {
        Box outside = scene.body().outside();
        double swing = SheetPlan.swing(scene.body(), Face.REAR, 1);
        double beyond = SheetPlan.swing(scene.body(), Face.FRONT, 1);
        double above = SheetPlan.swing(scene.body(), Face.LEFT, 1);
        double below = SheetPlan.swing(scene.body(), Face.RIGHT, 1);
        double room = WIDTH - 2 * MARGIN - KEY;
        double length = (outside.x1() - outside.x0()) / 1000.0;
        double scale = (length + swing + beyond) / room;
        double high = ((outside.y1() - outside.y0()) / 1000.0 + above + below) / scale;
        double height = MARGIN + HEAD + high + FOOT + MARGIN;
        Spot origin = new Spot(
                MARGIN + (swing - outside.x0() / 1000.0) / scale,
                MARGIN + HEAD + (outside.y1() / 1000.0 + above) / scale);
        Sheeted sheeted = new Sheeted(Aspect.ABOVE, scale, origin);
        FlatView view = new FlatView(scene, situation, sheeted, 0, null);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(new Bounds(0, 0, WIDTH, height), Role.VIEW.colour(), null));
        shapes.addAll(view.shapes());
        shapes.add(new Group("cables", Cables.of(scene, sheeted::spot)));
        FreeSpace space = new FreeSpace(new Bounds(0, MARGIN + HEAD, WIDTH - KEY, height - FOOT));
        Map<String, Integer> unnamed = names(scene, view, space, shapes);
        Balloons balloons = new Balloons(space, view);
        balloons.setOn(unnamed);
        balloons.setBeside(unnamed, List.of());
        shapes.add(balloons.shape());
        shapes.add(new Group("captions", captions(scene, caption, unnamed, height)));
        return new Drawing(caption.title() + ", " + caption.subtitle(), WIDTH, height, shapes);
    }

    private Map<String, Integer> names(Scene scene, FlatView view, FreeSpace space, List<Shape> shapes) {
        Map<String, Integer> unnamed = new LinkedHashMap<>();
        UnitNumbers.of(scene).forEach((id, number) -> {
            PlacedUnit unit = scene.unit(id).orElse(null);
            if (unit != null && !named(unit, view, space, shapes)) {
                unnamed.put(id, number);
            }
        });
        return unnamed;
    }

    private boolean named(PlacedUnit unit, FlatView view, FreeSpace space, List<Shape> shapes) {
        Label label = Lettering.in(Lettering.of(unit.name(), new Spot(0, 0), NAME), Role.ON_TOP.colour())
                .with(Weight.MEDIUM)
                .with(Align.MIDDLE);
        double width = typeface.width(label) + 2;
        double height = label.size() + 0.6;
        Spot best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Bounds part : view.parts(unit.id())) {
            for (double y = part.y0() + height / 2; y <= part.y1() - height / 2; y += STEP) {
                for (double x = part.x0() + width / 2; x <= part.x1() - width / 2; x += STEP) {
                    Spot spot = new Spot(x, y);
                    Bounds bounds = Bounds.around(spot, width, height);
                    double distance = spot.distance(part.centre());
                    if (distance < least - 1e-9 && space.free(bounds) && view.shows(bounds, unit.id())) {
                        best = spot;
                        least = distance;
                    }
                }
            }
        }
        if (best == null) {
            return false;
        }
        shapes.add(label.at(best.plus(0, NAME / 2)));
        space.take(Bounds.around(best, width, height));
        return true;
    }

    private static List<Shape> captions(Scene scene, Caption caption, Map<String, Integer> key, double height) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Lettering.bold(caption.title(), new Spot(MARGIN, MARGIN + 3), 3.2));
        shapes.add(Lettering.muted(caption.subtitle(), new Spot(MARGIN, MARGIN + 8.6), 2.3));
        shapes.add(Lettering.muted(caption.foot(), new Spot(WIDTH - MARGIN, height - 6), 1.8)
                .with(Align.END));
        double y = MARGIN + HEAD + 3;
        for (Map.Entry<String, Integer> entry : key.entrySet()) {
            String name = scene.unit(entry.getKey()).map(PlacedUnit::name).orElse("");
            shapes.add(Lettering.of(entry.getValue() + "  " + name, new Spot(WIDTH - MARGIN, y), 2.1)
                    .with(Align.END));
            y += 4.4;
        }
        return shapes;
    }
}
