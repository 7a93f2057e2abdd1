package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.app.view.Facet;
import org.shelterwright.app.view.Trace;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

/**
 * What rows of the ledger say about places on the floor, as patches that lie there: loads, the darker the more of the
 * capacity is used, and the narrowest place of each way. Figures are the ledger's.
 */
public final class FloorPatches {
    /** Just above the floor and the clear zones on it (µm). */
    private static final int ABOVE = 2_000;

    /** Opacities are rounded to twentieths, so that a scene has few colours. */
    private static final int SHADES = 20;

    private final List<Facet> facets = new ArrayList<>();
    private final List<Trace> traces = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();

    /** A figure on the floor. */
    public record Figure(Point at, String text, Colour colour) {}

    private FloorPatches() {}

    public static FloorPatches of(Ledger ledger, Set<Overlay> overlays) {
        FloorPatches patches = new FloorPatches();
        if (overlays.contains(Overlay.FLOOR_LOAD)) {
            patches.loads(ledger);
        }
        if (overlays.contains(Overlay.WALKWAYS)) {
            patches.ways(ledger);
        }
        return patches;
    }

    public List<Facet> facets() {
        return facets;
    }

    public List<Trace> traces() {
        return traces;
    }

    public List<Figure> figures() {
        return figures;
    }

    private void loads(Ledger ledger) {
        Map<Box, Row> worst = new LinkedHashMap<>();
        for (Row row : ledger.rows()) {
            Box place = row.place();
            if (row.subject() == Subject.FLOOR && place != null && place.x0() < place.x1() && place.y0() < place.y1()) {
                worst.merge(place, row, (a, b) -> use(a) >= use(b) ? a : b);
            }
        }
        worst.forEach((place, row) -> {
            boolean trouble = row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.CLOSE;
            Colour colour = trouble ? VerdictSign.colour(row.verdict()) : Role.BAR.colour();
            double share = 0.08 + 0.5 * Math.min(1, Math.max(0, use(row)));
            Double use = row.use();
            patch(place, colour, share, use == null ? "" : Numerals.of(use, 2), Role.TEXT.colour());
        });
    }

    private void ways(Ledger ledger) {
        for (Row row : ledger.rows()) {
            Box place = row.place();
            Double there = row.capacity();
            if (row.limit().equals("access.walkway") && place != null && there != null) {
                Colour colour = row.verdict() == Verdict.MET ? Role.ZONE.colour() : VerdictSign.colour(row.verdict());
                patch(place, colour, 0.15, Numerals.of(there, 0), colour);
            }
        }
    }

    private void patch(Box place, Colour colour, double share, String text, Colour textColour) {
        List<Point> ring = new ArrayList<>(List.of(
                new Point(place.x0(), place.y0(), ABOVE),
                new Point(place.x1(), place.y0(), ABOVE),
                new Point(place.x1(), place.y1(), ABOVE),
                new Point(place.x0(), place.y1(), ABOVE)));
        facets.add(new Facet(ring, colour.with((double) Math.round(share * SHADES) / SHADES)));
        if (!text.isEmpty()) {
            Point centre = place.centre();
            figures.add(new Figure(new Point(centre.x(), centre.y(), 0), text, textColour));
        }
        ring.add(ring.get(0));
        traces.add(new Trace(ring, Pen.of(0.3, colour)));
    }

    private static double use(Row row) {
        Double use = row.use();
        return use == null ? 0 : use;
    }
}
