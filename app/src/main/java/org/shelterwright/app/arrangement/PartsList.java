package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * The parts list: reference, name, mass and datum dimensions of each unit (columns after ISO 7573:2008, from memory).
 * Datum dimensions are those of the rear right bottom corner of a unit from rear wall, right wall and floor.
 */
final class PartsList {

    /** Width (mm). */
    static final double WIDTH = 140;

    private static final double ROW = 5;
    private static final double HEAD = 11;
    private static final double[] ENDS = {9, 66, 84, 101, 117, 131, WIDTH};
    private static final Pen THIN = Pen.of(0.18, Role.TEXT.colour());

    private final Typeface typeface;
    private final Scene scene;
    private final Situation situation;
    private final Map<String, Integer> numbers;

    PartsList(Typeface typeface, Scene scene, Situation situation, Map<String, Integer> numbers) {
        this.typeface = typeface;
        this.scene = scene;
        this.situation = situation;
        this.numbers = numbers;
    }

    /** Height of a list with so many units (mm). */
    static double height(int units) {
        return HEAD + ROW * units;
    }

    /** The list of some units, with its upper left corner at a place. */
    List<Shape> shapes(Spot corner, List<UnitSpec> units) {
        List<Shape> shapes = new ArrayList<>();
        double bottom = corner.y() + height(units.size());
        shapes.add(
                Polygon.of(new Bounds(corner.x(), corner.y(), corner.x() + WIDTH, bottom), Role.RAISED.colour(), THIN));
        head(shapes, corner);
        double y = corner.y() + HEAD;
        for (UnitSpec unit : units) {
            row(shapes, corner.x(), y, unit);
            y += ROW;
            shapes.add(Lines.of(THIN, new Spot(corner.x(), y), new Spot(corner.x() + WIDTH, y)));
        }
        for (double end : ENDS) {
            shapes.add(Lines.of(THIN, new Spot(corner.x() + end, corner.y()), new Spot(corner.x() + end, bottom)));
        }
        return shapes;
    }

    private void head(List<Shape> shapes, Spot corner) {
        String[] upper = {"Ref.", "Unit", "Mass", "x from", "y from", "z from", "Turn"};
        String[] lower = {"", "", "kg", "rear wall", "right wall", "floor", "°"};
        for (int i = 0; i < upper.length; i++) {
            boolean start = i == 1;
            double x = corner.x() + (start ? ENDS[0] + 1.5 : ENDS[i] - 1.2);
            Align align = start ? Align.START : Align.END;
            shapes.add(
                    Lettering.bold(upper[i], new Spot(x, corner.y() + 4.4), 1.8).with(align));
            if (!lower[i].isEmpty()) {
                shapes.add(Lettering.muted(lower[i], new Spot(x, corner.y() + 8.8), 1.8)
                        .with(align));
            }
        }
        double y = corner.y() + HEAD;
        shapes.add(
                Lines.of(Pen.of(0.35, Role.TEXT.colour()), new Spot(corner.x(), y), new Spot(corner.x() + WIDTH, y)));
    }

    private void row(List<Shape> shapes, double left, double y, UnitSpec unit) {
        Double mass = scene.filled(unit, Situation.ON_THE_ROAD).mass().massKg();
        List<String> cells = new ArrayList<>();
        cells.add(Integer.toString(numbers.getOrDefault(unit.id(), 0)));
        cells.add(
                new Wrap(typeface, Typeface.sizeOf(2.5), Weight.REGULAR).shortened(unit.name(), ENDS[1] - ENDS[0] - 3));
        cells.add(mass == null ? "?" : Numerals.of(mass, mass == Math.rint(mass) ? 0 : 1));
        PlacedUnit placed = scene.unit(unit.id()).orElse(null);
        if (placed != null) {
            Point at = placed.pose(situation).at();
            cells.add(Numerals.mm(at.x()));
            cells.add(Numerals.mm(at.y()));
            cells.add(Numerals.mm(at.z()));
            cells.add(Integer.toString(placed.pose(situation).yaw().degrees()));
        } else {
            cells.add("to place");
        }
        for (int i = 0; i < cells.size(); i++) {
            Spot at = new Spot(left + (i == 1 ? ENDS[0] + 1.5 : ENDS[i] - 1.2), y + 3.75);
            Label label = Lettering.of(cells.get(i), at, 2.5);
            shapes.add(i == 1 ? label : label.with(Align.END));
        }
    }
}
