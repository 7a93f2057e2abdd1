package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Catch;
import org.shelterwright.app.desk.hand.Ray;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Row;

/** Draws what lies over a loaded car: outlines, findings, what caught, letters of lashings, what its wheels bear. */
public final class CarMarks {
    private static final double FARTHEST_TAG = 160;
    private static final double TOP_BAND = 56;
    private static final double LETTER = 11;
    private static final double WHEELS = 12;
    private static final Pen LEADER = Pen.of(0.3, Role.LINES.colour());

    private final Glass glass;
    private final Typeface typeface;
    private final Predicate<Ray> met;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Tag> tags = new ArrayList<>();
    private final List<Bounds> taken = new ArrayList<>();

    /** @param met whether a line of sight meets something worth seeing */
    public CarMarks(Glass glass, Typeface typeface, Predicate<Ray> met) {
        this.glass = glass;
        this.typeface = typeface;
        this.met = met;
        taken.add(new Bounds(0, 0, glass.bounds().x1(), glass.sized(TOP_BAND)));
    }

    /** A part of the pane in which no tag may lie. */
    public void keepFree(Bounds bounds) {
        taken.add(bounds);
    }

    public void selected(List<Box> solids) {
        shapes.addAll(SelectionMark.selected(glass, solids));
    }

    public void hovered(List<Box> solids) {
        shapes.addAll(SelectionMark.hovered(glass, solids));
    }

    public void caught(Catch caught) {
        shapes.addAll(CatchLook.shapes(glass, caught));
        tags.add(Tag.caught(glass.spot(caught.place()), caught.words()));
    }

    /**
     * Places of findings.
     *
     * @param rows of one leg, tightest first
     * @param sized whether the place of a broken row of what is selected is shown in its true size
     * @param where the place of a row; empty if it is not on this car
     * @param chosen the one that is looked at; {@code null} if none
     * @param selected ids of what is moved
     */
    public void findings(
            List<Row> rows,
            Predicate<Row> sized,
            Function<Row, Optional<Box>> where,
            @Nullable Finding chosen,
            Set<String> selected) {
        FindingMarks marks = new FindingMarks(glass, rows, sized, where);
        marks.mark(chosen, selected, typeface);
        shapes.addAll(marks.shapes());
        taken.addAll(marks.signs());
        Tag tag = marks.tag();
        if (tag != null) {
            tags.add(0, tag);
        }
    }

    /** The key of a lashing at its foot. */
    public void letter(Point at, String key) {
        Spot spot = glass.spot(at).plus(0, glass.sized(12));
        double wide = typeface.width(key, glass.sized(LETTER), Weight.SEMIBOLD) + glass.sized(6);
        Bounds bounds = Bounds.around(spot, wide, glass.sized(15));
        if (taken.stream().noneMatch(bounds::overlaps)) {
            taken.add(bounds);
            shapes.add(new Polygon(
                    TagLook.rounded(bounds, 0.6), Role.PANEL.colour().with(0.85), null));
            shapes.add(text(key, spot, LETTER, Weight.SEMIBOLD, Role.TEXT));
        }
    }

    /** What a group of wheels bears, below it. */
    public void wheels(Point at, String words) {
        Spot spot = glass.spot(at);
        double wide = typeface.width(words, glass.sized(WHEELS), Weight.SEMIBOLD) + glass.sized(18);
        double high = glass.sized(24);
        double low = glass.bounds().y1() - high / 2 - 1;
        Spot middle = new Spot(spot.x(), Math.min(low, spot.y() + glass.sized(44)));
        Bounds bounds = Bounds.around(middle, wide, high);
        taken.add(bounds);
        shapes.add(Lines.of(LEADER, spot, middle.plus(0, -high / 2)));
        shapes.add(new Polygon(TagLook.rounded(bounds, 0.75), Role.RAISED.colour(), LEADER));
        shapes.add(text(words, middle, WHEELS, Weight.SEMIBOLD, Role.TEXT));
    }

    /** The centre of mass of something: a quartered ring with its plumb line to the floor. */
    public void centre(Point at, Point floor) {
        Spot spot = glass.spot(at);
        Spot foot = glass.spot(floor);
        Pen pen = Pen.of(0.4, Role.CENTRE_OF_MASS.colour());
        double r = glass.sized(7);
        shapes.add(Lines.of(Pen.of(0.9, Role.PANEL.colour()), spot, foot));
        shapes.add(Lines.of(pen, spot, foot));
        shapes.add(new Circle(foot, 0.5, Role.CENTRE_OF_MASS.colour(), null));
        shapes.add(new Circle(spot, r, Role.PANEL.colour(), pen));
        shapes.add(Lines.of(pen, spot.plus(-r, 0), spot.plus(r, 0)));
        shapes.add(Lines.of(pen, spot.plus(0, -r), spot.plus(0, r)));
    }

    /** Everything, with the tags placed. */
    public List<Shape> shapes() {
        TagPlacing placing = new TagPlacing(glass.bounds().grown(-1.5), this::busy, FARTHEST_TAG / ScreenCanvas.PIXELS);
        taken.forEach(placing::keepFree);
        new TagLook(glass, typeface).draw(tags, placing, shapes);
        return shapes;
    }

    private Label text(String words, Spot middle, double size, Weight weight, Role role) {
        double em = glass.sized(size);
        return new Label(words, middle.plus(0, em * Typeface.CAPITAL / 2), em, weight, Align.MIDDLE, 0, role.colour());
    }

    private double busy(Bounds b) {
        int on = 0;
        int count = 0;
        for (double x = b.x0(); x <= b.x1(); x += b.width() / 3) {
            for (double y = b.y0(); y <= b.y1(); y += b.height() / 2) {
                count++;
                on += met.test(glass.eye().ray(x * ScreenCanvas.PIXELS, y * ScreenCanvas.PIXELS)) ? 1 : 0;
            }
        }
        return (double) on / count;
    }
}
