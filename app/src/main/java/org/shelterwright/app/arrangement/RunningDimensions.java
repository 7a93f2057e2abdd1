package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.Weights;

/**
 * Running dimensions along one line from a datum: an open circle at the datum, an arrow at each place, and the distance
 * from the datum beside its extension line.
 *
 * <p>Source: ISO 129-1:2018, superimposed running dimensioning (from memory).
 */
final class RunningDimensions {

    private static final double CAPITALS = 2.5;
    private static final double APART = 3.6;
    private static final double ARROW = 2.2;
    private static final double HALF = 0.4;
    private static final double BEYOND = 4;

    private final Typeface typeface;
    private final FreeSpace space;
    private final boolean upright;
    private final double datum;
    private final double perMicrometre;
    private final double line;
    private final double outward;
    private final Map<Integer, Double> places = new TreeMap<>();

    /**
     * @param upright true if the line stands upright, false if it lies
     * @param datum where the datum lies along the line (mm on the sheet)
     * @param perMicrometre mm on the sheet for a µm, negative if the line runs to the left or up
     * @param line where the line itself lies (mm on the sheet)
     * @param outward +1 if figures stand to the right of or below the line, −1 if to the left of or above it
     */
    RunningDimensions(
            Typeface typeface,
            FreeSpace space,
            boolean upright,
            double datum,
            double perMicrometre,
            double line,
            int outward) {
        this.typeface = typeface;
        this.space = space;
        this.upright = upright;
        this.datum = datum;
        this.perMicrometre = perMicrometre;
        this.line = line;
        this.outward = outward;
    }

    /**
     * Adds a distance from the datum.
     *
     * @param from where its extension line begins, across the line (mm on the sheet)
     */
    void add(int micrometres, double from) {
        if (micrometres != 0) {
            places.merge(micrometres, from, outward > 0 ? Math::min : Math::max);
        }
    }

    List<Shape> shapes() {
        List<Shape> shapes = new ArrayList<>();
        if (places.isEmpty()) {
            return shapes;
        }
        double[] at = places.keySet().stream()
                .mapToDouble(value -> value * perMicrometre)
                .map(place -> perMicrometre < 0 ? -place : place)
                .toArray();
        double[] texts = Spread.apart(at, APART);
        double sign = Math.signum(perMicrometre);
        shapes.add(Lines.of(Weights.THIN, spot(datum, line), spot(datum + sign * at[at.length - 1], line)));
        shapes.add(new Circle(spot(datum, line), 1, Role.RAISED.colour(), Weights.THIN));
        int i = 0;
        for (Map.Entry<Integer, Double> place : places.entrySet()) {
            double along = datum + sign * at[i];
            double text = datum + sign * texts[i];
            extension(shapes, along, text, place.getValue());
            arrow(shapes, along, sign);
            label(shapes, Numerals.mm(place.getKey()), text);
            i++;
        }
        return shapes;
    }

    private void extension(List<Shape> shapes, double along, double text, double from) {
        double start = from + outward * 0.8;
        Spot knee = spot(along, line + outward * 1.2);
        Spot end = spot(text, line + outward * (BEYOND - 0.6));
        shapes.add(Lines.of(Weights.THIN, spot(along, start), knee, end));
        space.take(spot(along, start), knee);
    }

    private void arrow(List<Shape> shapes, double along, double sign) {
        shapes.add(new Polygon(
                List.of(
                        spot(along, line),
                        spot(along - sign * ARROW, line - HALF),
                        spot(along - sign * ARROW, line + HALF)),
                Role.TEXT.colour(),
                null));
    }

    private void label(List<Shape> shapes, String text, double along) {
        double half = CAPITALS / 2;
        Label label = upright
                ? Lettering.of(text, new Spot(line + outward * BEYOND, along + half), CAPITALS)
                        .with(outward > 0 ? Align.START : Align.END)
                : Lettering.upright(
                        text,
                        new Spot(along + half, line + outward * BEYOND),
                        CAPITALS,
                        outward > 0 ? Align.END : Align.START);
        shapes.add(label);
        space.take(typeface.bounds(label));
    }

    private Spot spot(double along, double across) {
        return upright ? new Spot(across, along) : new Spot(along, across);
    }
}
