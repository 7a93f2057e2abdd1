package org.shelterwright.app.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.app.view.OrderedPainting;
import org.shelterwright.app.view.PictureModel;
import org.shelterwright.app.view.Projection;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.revision.LimitShift;
import org.shelterwright.layouts.revision.Reuse;
import org.shelterwright.layouts.revision.Revision;
import org.shelterwright.layouts.revision.StepShift;
import org.shelterwright.layouts.revision.UnitShift;
import org.shelterwright.layouts.revision.WireShift;
import org.shelterwright.layouts.scene.Scene;

/** Two revisions on one lying A3 page: pictures above, below what is kept, units, checks, wires and steps. */
final class RevisionSheet {
    private static final double WIDTH = 420;
    private static final double HEIGHT = 297;
    private static final double LEFT = 20;
    private static final double RIGHT = 410;
    private static final double PICTURES = 24;
    private static final double PICTURE_HEIGHT = 104;
    private static final double LISTS = 141;
    private static final double BOTTOM = 279;
    private static final double LINE = 4.4;
    private static final double TEXT = 2;
    private static final double GAP = 6;
    private static final double SECOND = 20;

    private final Typeface typeface;
    private final List<Shape> shapes = new ArrayList<>();

    RevisionSheet(Typeface typeface) {
        this.typeface = typeface;
    }

    /** A line of a list: a name, and one or two texts at its right edge. */
    private record Line(String name, String first, String second) {}

    Drawing of(Revision revision, String foot) {
        String title = revision.after().brief().name() + ", two revisions";
        shapes.add(Polygon.of(new Bounds(0, 0, WIDTH, HEIGHT), colour(Role.PANEL), null));
        text(title, new Spot(LEFT, 17), 3.5, Role.TEXT, Weight.SEMIBOLD, Align.START);
        double half = (RIGHT - LEFT - GAP) / 2;
        picture("Before", revision.before(), revision.ledgerBefore(), LEFT, half);
        picture("After", revision.after(), revision.ledgerAfter(), LEFT + half + GAP, half);
        double column = (RIGHT - LEFT - 3 * GAP) / 4;
        double y = list("Kept", "", "", kept(revision.reuse()), LEFT, LISTS, column, 8);
        list("To be issued again", "", "", documents(revision), LEFT, y + GAP, column, 99);
        double x = LEFT + column + GAP;
        list("Units", "moved by x, y, z (mm)", "kg", units(revision), x, LISTS, column, 99);
        x += column + GAP;
        list("Checks that change", "before", "now", checks(revision), x, LISTS, column, 99);
        x += column + GAP;
        y = list("Cables", "cut before (mm)", "now", wires(revision), x, LISTS, column, 15);
        list("Steps", "before", "now", steps(revision), x, y + GAP, column, 99);
        text(foot, new Spot(LEFT, HEIGHT - 9), 1.7, Role.MUTED, Weight.REGULAR, Align.START);
        return new Drawing(title, WIDTH, HEIGHT, shapes);
    }

    private void picture(String name, Scene scene, Ledger ledger, double x, double width) {
        Bounds area = new Bounds(x, PICTURES, x + width, PICTURES + PICTURE_HEIGHT);
        PictureModel model = PictureModel.of(scene, Situation.ON_STATION, Axonometry.FROM_REAR_RIGHT, true);
        Bounds inside = new Bounds(area.x0() + 3, area.y0() + 9, area.x1() - 3, area.y1() - 3);
        Projection projection = Projection.fitting(Axonometry.FROM_REAR_RIGHT, model.points(), inside);
        List<Shape> drawn = new ArrayList<>();
        drawn.add(Polygon.of(area, colour(Role.VIEW), null));
        drawn.addAll(new OrderedPainting(projection).shapes(model));
        drawn.addAll(VerdictSign.shapes(ledger.worst(), new Spot(area.x0() + 4, area.y0() + 4.4), 1.8));
        shapes.add(new Group(name, drawn));
        text(name, new Spot(area.x0() + 8, area.y0() + 5.4), 2.5, Role.TEXT, Weight.SEMIBOLD, Align.START);
        text(
                scene.body().name() + ", on station, seen from the rear right",
                new Spot(area.x0(), area.y1() + 4.5),
                1.8,
                Role.MUTED,
                Weight.REGULAR,
                Align.START);
    }

    private static List<Line> kept(Reuse reuse) {
        return List.of(
                new Line("Holes kept", reuse.holesKept() + " of " + reuse.holes(), percent(reuse.holeShare())),
                new Line("New holes", "", Integer.toString(reuse.holesNew())),
                new Line("Cables kept", reuse.cablesKept() + " of " + reuse.cables(), percent(reuse.cableShare())),
                new Line("Cables that lie as they did", "", Integer.toString(reuse.cablesUntouched())),
                new Line("Cables to cut", "", Integer.toString(reuse.cablesNew())));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", Math.floor(100 * share + 1e-9));
    }

    private static List<Line> documents(Revision revision) {
        List<Line> lines = new ArrayList<>();
        revision.reissues().forEach(one -> lines.add(new Line(one.document(), "", "")));
        return lines;
    }

    private static List<Line> units(Revision revision) {
        List<Line> lines = new ArrayList<>();
        for (UnitShift one : revision.units()) {
            lines.add(new Line(
                    one.name(), RevisionWords.moved(one) + (one.turned() ? ", turned" : ""), RevisionWords.mass(one)));
        }
        for (String name : revision.reshaped()) {
            lines.add(new Line(name, "other size or kind", ""));
        }
        return lines;
    }

    private static List<Line> checks(Revision revision) {
        List<Line> lines = new ArrayList<>();
        for (LimitShift one : revision.limits()) {
            lines.add(new Line(one.title(), use(one.first()), use(one.second())));
        }
        return lines;
    }

    private static String use(@Nullable Row row) {
        if (row == null) {
            return "none";
        }
        Double use = row.use();
        return switch (row.verdict()) {
            case BROKEN -> "broken";
            case NOT_ASSESSED -> "not assessed";
            case CLOSE, MET -> use == null ? row.verdict().word() : percent(Objects.requireNonNull(use));
        };
    }

    private static List<Line> wires(Revision revision) {
        List<Line> lines = new ArrayList<>();
        for (WireShift one : revision.wires()) {
            lines.add(new Line(one.wire(), RevisionWords.length(one.first()), RevisionWords.length(one.second())));
        }
        return lines;
    }

    private static List<Line> steps(Revision revision) {
        List<Line> lines = new ArrayList<>();
        for (StepShift one : revision.steps()) {
            lines.add(new Line(
                    one.name() + (one.other() ? "" : " (same work)"),
                    RevisionWords.number(one.first()),
                    RevisionWords.number(one.second())));
        }
        return lines;
    }

    /** Draws a list and gives where it ends; what does not fit is counted. */
    private double list(
            String title, String first, String second, List<Line> lines, double x, double top, double width, int most) {
        double end = x + width;
        double firstEnd = end - SECOND;
        double y = top;
        text(title, new Spot(x, y), 2.5, Role.TEXT, Weight.SEMIBOLD, Align.START);
        text(first, new Spot(firstEnd, y), 1.7, Role.MUTED, Weight.REGULAR, Align.END);
        text(second, new Spot(end, y), 1.7, Role.MUTED, Weight.REGULAR, Align.END);
        shapes.add(Lines.of(Pen.of(0.25, colour(Role.LINES)), new Spot(x, y + 1.6), new Spot(end, y + 1.6)));
        y += LINE + 1.4;
        int room = Math.max(1, (int) ((BOTTOM - y) / LINE) + 1);
        int shown = lines.size() <= Math.min(most, room) ? lines.size() : Math.min(most, room) - 1;
        for (Line line : lines.subList(0, shown)) {
            double taken = widthOf(line.first());
            double name = line.first().isEmpty()
                    ? (line.second().isEmpty() ? width : width - SECOND - 1)
                    : width - SECOND - 2 - taken;
            text(shortened(line.name(), name), new Spot(x, y), TEXT, Role.TEXT, Weight.REGULAR, Align.START);
            text(line.first(), new Spot(firstEnd, y), TEXT, Role.TEXT, Weight.REGULAR, Align.END);
            text(line.second(), new Spot(end, y), TEXT, Role.TEXT, Weight.MEDIUM, Align.END);
            y += LINE;
        }
        if (lines.isEmpty() || shown < lines.size()) {
            String rest = lines.isEmpty() ? "nothing" : "and " + (lines.size() - shown) + " more, in revisions.csv";
            text(rest, new Spot(x, y), TEXT, Role.MUTED, Weight.REGULAR, Align.START);
            y += LINE;
        }
        return y;
    }

    private double widthOf(String text) {
        return text.isEmpty()
                ? 0
                : typeface.bounds(new Label(
                                text,
                                new Spot(0, 0),
                                Typeface.sizeOf(TEXT),
                                Weight.REGULAR,
                                Align.START,
                                0,
                                colour(Role.TEXT)))
                        .width();
    }

    private String shortened(String text, double width) {
        return new Wrap(typeface, Typeface.sizeOf(TEXT), Weight.REGULAR).shortened(text, width);
    }

    private void text(String text, Spot at, double capitals, Role role, Weight weight, Align align) {
        if (!text.isEmpty()) {
            shapes.add(new Label(text, at, Typeface.sizeOf(capitals), weight, align, 0, colour(role)));
        }
    }

    private Colour colour(Role role) {
        return role.colour();
    }
}
