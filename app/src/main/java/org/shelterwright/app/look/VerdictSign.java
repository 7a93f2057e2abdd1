package org.shelterwright.app.look;

import java.util.List;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.layouts.ledger.Verdict;

/** The signs of verdicts. They differ by shape, so that they can be told apart in one colour. */
public final class VerdictSign {

    private VerdictSign() {}

    /** A sign on light ground in a circle of the given radius (mm). */
    public static List<Shape> shapes(Verdict verdict, Spot centre, double radius) {
        return shapes(verdict, centre, radius, Ground.LIGHT);
    }

    /** A sign in a circle of the given radius, in whatever unit the drawing has. */
    public static List<Shape> shapes(Verdict verdict, Spot centre, double radius, Ground ground) {
        double unit = radius / 7;
        Pen pen = Pen.of(1.6 * unit, colour(verdict, ground));
        return switch (verdict) {
            case MET ->
                List.of(
                        new Circle(centre, 6 * unit, null, pen),
                        Lines.of(
                                pen,
                                centre.plus(-2.7 * unit, 0.2 * unit),
                                centre.plus(-0.75 * unit, 2.4 * unit),
                                centre.plus(2.8 * unit, -1.9 * unit)));
            case CLOSE ->
                List.of(
                        new Polygon(
                                List.of(
                                        centre.plus(0, -6.6 * unit),
                                        centre.plus(7.2 * unit, 6.2 * unit),
                                        centre.plus(-7.2 * unit, 6.2 * unit)),
                                Role.CLOSE_WASH.colour(ground),
                                pen),
                        Lines.of(pen, centre.plus(0, -2.2 * unit), centre.plus(0, 3.6 * unit)));
            case BROKEN ->
                List.of(
                        new Polygon(
                                List.of(
                                        centre.plus(0, -7.8 * unit),
                                        centre.plus(7.8 * unit, 0),
                                        centre.plus(0, 7.8 * unit),
                                        centre.plus(-7.8 * unit, 0)),
                                colour(verdict, ground),
                                null),
                        cross(centre, 2.5 * unit, Pen.of(1.7 * unit, Role.PANEL.colour(ground))));
            case NOT_ASSESSED ->
                List.of(
                        new Polygon(
                                List.of(
                                        centre.plus(-6.2 * unit, -6.2 * unit),
                                        centre.plus(6.2 * unit, -6.2 * unit),
                                        centre.plus(6.2 * unit, 6.2 * unit),
                                        centre.plus(-6.2 * unit, 6.2 * unit)),
                                null,
                                Pen.of(1.4 * unit, colour(verdict, ground)).with(LineType.SHORT_DASHED)),
                        Lines.of(pen, centre.plus(-2.8 * unit, 0), centre.plus(2.8 * unit, 0)));
        };
    }

    /** The colour of a verdict on light ground. */
    public static Colour colour(Verdict verdict) {
        return colour(verdict, Ground.LIGHT);
    }

    public static Colour colour(Verdict verdict, Ground ground) {
        return role(verdict).colour(ground);
    }

    public static Role role(Verdict verdict) {
        return switch (verdict) {
            case MET -> Role.MET;
            case CLOSE -> Role.CLOSE;
            case BROKEN -> Role.BROKEN;
            case NOT_ASSESSED -> Role.NOT_ASSESSED;
        };
    }

    private static Shape cross(Spot centre, double arm, Pen pen) {
        return new Lines(
                List.of(
                        List.of(centre.plus(-arm, -arm), centre.plus(arm, arm)),
                        List.of(centre.plus(arm, -arm), centre.plus(-arm, arm))),
                pen);
    }
}
