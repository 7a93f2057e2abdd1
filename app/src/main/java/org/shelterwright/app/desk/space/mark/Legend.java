package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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

/** What the signs of the overlays mean, in the lower right corner. Zones and swings alone explain themselves. */
final class Legend {
    private static final double SIZE = 11.5;
    private static final double ROW = 20;
    private static final double SAMPLE = 34;
    private static final double MARGIN = 10;
    private static final double INSET = 14;
    private static final double CORNER = 1.2;

    /** Height of capitals over the em, halved: how far below the middle of a line its base is. */
    private static final double BASE = Typeface.CAPITAL / 2;

    private static final Pen FINE = Pen.of(0.3, Role.ZONE.colour());
    private static final Pen MARK = Pen.of(0.4, Role.CENTRE_OF_MASS.colour());

    private final Glass glass;
    private final Typeface typeface;
    private final List<Overlay> rows;
    private final Bounds bounds;

    /** @param overlays those that are shown */
    Legend(Glass glass, Typeface typeface, Set<Overlay> overlays) {
        this.glass = glass;
        this.typeface = typeface;
        boolean needed = overlays.stream().anyMatch(one -> one != Overlay.CLEAR_ZONES && one != Overlay.SWINGS);
        rows = needed ? overlays.stream().sorted().toList() : List.of();
        double widest = 0;
        for (Overlay row : rows) {
            widest = Math.max(widest, typeface.width(words(row), glass.sized(SIZE), Weight.REGULAR));
        }
        double width = widest + glass.sized(SAMPLE + 2.8 * MARGIN);
        double height = glass.sized(ROW * rows.size() + MARGIN);
        Bounds pane = glass.bounds();
        double x = pane.x1() - glass.sized(INSET) - width;
        double y = pane.y1() - glass.sized(INSET) - height;
        bounds = new Bounds(x, y, x + width, y + height);
    }

    static String words(Overlay overlay) {
        return switch (overlay) {
            case CLEAR_ZONES -> "must stay free";
            case SWINGS -> "doors, drawers and flaps on their way";
            case CENTRE_OF_MASS -> "centre of mass of the filled body; ticks: outside";
            case FLOOR_LOAD -> "load on the floor; 1.00 is all that it bears";
            case WALKWAYS -> "narrowest place of a way (mm)";
        };
    }

    /** Whether there is something to explain, and room for it beside the view's other things. */
    boolean shown() {
        return !rows.isEmpty()
                && bounds.width() < glass.bounds().width() * 0.7
                && bounds.height() < glass.bounds().height() / 2;
    }

    Bounds bounds() {
        return bounds;
    }

    List<Shape> shapes() {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Polygon(
                TagLook.rounded(bounds, CORNER), Role.PANEL.colour().with(0.95), Pen.of(0.25, Role.LINE.colour())));
        for (int i = 0; i < rows.size(); i++) {
            double y = bounds.y0() + glass.sized(MARGIN / 2 + ROW * (i + 0.5));
            Spot left = new Spot(bounds.x0() + glass.sized(MARGIN), y);
            shapes.addAll(sample(rows.get(i), left));
            shapes.add(new Label(
                    words(rows.get(i)),
                    left.plus(glass.sized(SAMPLE + 0.8 * MARGIN), glass.sized(SIZE) * BASE),
                    glass.sized(SIZE),
                    Weight.REGULAR,
                    Align.START,
                    0,
                    Role.TEXT.colour()));
        }
        return shapes;
    }

    /** @param left the middle of its left edge */
    private List<Shape> sample(Overlay overlay, Spot left) {
        double w = glass.sized(SAMPLE);
        double h = glass.sized(ROW) * 0.28;
        Bounds box = new Bounds(left.x(), left.y() - h, left.x() + w, left.y() + h);
        return switch (overlay) {
            case CLEAR_ZONES -> hatched(box);
            case SWINGS ->
                List.of(
                        Lines.of(FINE, left.plus(0, h), left.plus(w, h)),
                        Lines.of(
                                FINE,
                                left.plus(0, h),
                                left.plus(w * 0.1, -h * 0.3),
                                left.plus(w * 0.45, -h),
                                left.plus(w, h)));
            case CENTRE_OF_MASS -> centre(left, w);
            case FLOOR_LOAD ->
                List.of(
                        patch(new Bounds(box.x0(), box.y0(), box.x0() + w / 2, box.y1()), 0.15),
                        patch(new Bounds(box.x0() + w / 2, box.y0(), box.x1(), box.y1()), 0.5));
            case WALKWAYS ->
                List.of(
                        Polygon.of(box, Role.ZONE.colour().with(0.15), FINE),
                        new Label(
                                "700",
                                box.centre().plus(0, glass.sized(SIZE) * BASE * 0.85),
                                glass.sized(SIZE) * 0.85,
                                Weight.SEMIBOLD,
                                Align.MIDDLE,
                                0,
                                Role.ZONE.colour()));
        };
    }

    private static List<Shape> hatched(Bounds box) {
        List<List<Spot>> strokes = new ArrayList<>();
        double step = box.width() / 6;
        for (double x = box.x0(); x + box.height() <= box.x1() + 1e-9; x += step) {
            strokes.add(List.of(new Spot(x, box.y1()), new Spot(x + box.height(), box.y0())));
        }
        return List.of(Polygon.of(box, null, FINE), new Lines(strokes, FINE));
    }

    private static Polygon patch(Bounds box, double share) {
        return Polygon.of(box, Role.BAR.colour().with(share), Pen.of(0.3, Role.BAR.colour()));
    }

    private List<Shape> centre(Spot left, double w) {
        double r = glass.sized(5);
        Spot at = left.plus(r * 1.5, 0);
        List<Shape> shapes = new ArrayList<>(List.of(
                new Circle(at, r, Role.PANEL.colour(), MARK),
                Lines.of(MARK, at.plus(-r * 1.4, 0), at.plus(r * 1.4, 0)),
                Lines.of(MARK, at.plus(0, -r * 1.4), at.plus(0, r * 1.4))));
        Spot from = left.plus(r * 3.6, r / 2);
        Spot to = left.plus(w, r / 2);
        shapes.add(Lines.of(Pen.of(0.45, Role.FENCE.colour()), from, to));
        List<List<Spot>> ticks = new ArrayList<>();
        for (double share : new double[] {0.1, 0.4, 0.7}) {
            Spot foot = from.towards(to, share);
            ticks.add(List.of(foot, foot.plus(r * 0.7, -r * 0.9)));
        }
        shapes.add(new Lines(ticks, Pen.of(0.3, Role.FENCE.colour())));
        return shapes;
    }
}
