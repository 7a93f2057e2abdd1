package org.shelterwright.app.elevation;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Labels for places and pieces on A4 sheets, three across and eight down, each with its code large and to be read by machine. */
public final class LabelSheets {
    private static final double WIDTH = 63;
    private static final double HEIGHT = 33;
    private static final int ACROSS = 3;
    private static final int DOWN = 8;
    private static final double LEFT = 10.5;
    private static final double TOP = 16;
    /** Side of the code for machines, 21 modules of 0.76 mm, and its distance from the edges: four modules and more. */
    private static final double SQUARE = 16;

    private static final double QUIET = 3.4;

    private final Typeface typeface;
    private final Scene scene;
    private final Codes codes;

    /**
     * One label.
     *
     * @param upper first line beside the code
     * @param lower second line
     */
    private record Label(String code, String upper, String lower) {}

    public LabelSheets(Typeface typeface, Scene scene) {
        this.typeface = typeface;
        this.scene = scene;
        this.codes = new Codes(scene);
    }

    public List<Drawing> pages() {
        List<Label> labels = labels();
        List<Drawing> pages = new ArrayList<>();
        int each = ACROSS * DOWN;
        for (int from = 0; from < labels.size(); from += each) {
            List<Shape> shapes = new ArrayList<>();
            for (int i = from; i < Math.min(labels.size(), from + each); i++) {
                int at = i - from;
                double x = LEFT + at % ACROSS * WIDTH;
                double y = TOP + at / ACROSS * HEIGHT;
                shapes.addAll(shapes(labels.get(i), x, y));
            }
            pages.add(new Drawing("Labels, page " + (pages.size() + 1), 210, 297, shapes));
        }
        return pages;
    }

    private List<Label> labels() {
        List<Label> labels = new ArrayList<>();
        for (UnitSpec spec : scene.brief().units()) {
            scene.unit(spec.id()).ifPresent(unit -> labels.addAll(places(unit)));
        }
        for (UnitSpec unit : scene.brief().units()) {
            for (Held held : scene.interiors().held(unit.id())) {
                boolean blank = held instanceof InRack in && in.mount().blank();
                if (!blank) {
                    Double kg = held.piece().mass().massKg();
                    labels.add(new Label(
                            codes.piece(held.id()),
                            held.name(),
                            codes.where(held) + (kg == null ? "" : ", " + Numerals.short3(kg) + " kg")));
                }
            }
        }
        return labels;
    }

    /** The places of a unit, empty ones too. */
    private List<Label> places(PlacedUnit unit) {
        List<Label> labels = new ArrayList<>();
        for (RackBay bay : unit.item().bays()) {
            labels.add(new Label(codes.place(unit.id(), bay.name()), unit.name(), bay.name()));
        }
        for (Stowage stowage : unit.item().stowages()) {
            labels.add(new Label(
                    codes.place(unit.id(), stowage.name()),
                    unit.name(),
                    stowage.name() + ", up to " + Numerals.short3(stowage.ratingKg()) + " kg"));
        }
        return labels;
    }

    private List<Shape> shapes(Label label, double x, double y) {
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(2.5), Weight.MEDIUM);
        Wrap small = new Wrap(typeface, Typeface.sizeOf(2), Weight.REGULAR);
        return List.of(
                Polygon.of(new Bounds(x, y, x + WIDTH, y + HEIGHT), null, Pen.of(0.1, Role.LINE.colour())),
                Lettering.bold(label.code(), new Spot(x + 5, y + 14), 5),
                ReadableCode.of(label.code(), x + WIDTH - QUIET - SQUARE, y + QUIET, SQUARE),
                Lettering.of(wrap.shortened(label.upper(), WIDTH - 10), new Spot(x + 5, y + 25.5), 2.5)
                        .with(Weight.MEDIUM),
                Lettering.muted(small.shortened(label.lower(), WIDTH - 10), new Spot(x + 5, y + 30), 2));
    }
}
