package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.Block;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * Draws what lies over the space while units are brought in: the way in of one as ghosts with a line through them, the names
 * of those that are in, the prints of those to come.
 */
public final class WayMarks {
    private static final Pen GHOST = Pen.of(0.325, Role.ACCENT.colour()).with(LineType.DASHED);
    private static final Pen COMING = Pen.of(0.325, Role.MUTED.colour()).with(LineType.DASHED);
    private static final Pen CASING = Pen.of(1.4, Role.PANEL.colour());
    private static final Pen WAY = Pen.of(0.75, Role.ACCENT.colour());
    private static final double SIZE = 11.5;

    private final Glass glass;
    private final Typeface typeface;
    private final List<Shape> shapes = new ArrayList<>();

    /**
     * Something with a name on its top, or on its print.
     *
     * @param box its outline
     * @param words the longest first; the first that has room is shown
     */
    public record Named(String unit, Box box, List<String> words) {
        public Named {
            words = List.copyOf(words);
        }
    }

    /**
     * A way in.
     *
     * @param now where the unit is
     * @param ghosts where it passes, from the outside to its place; empty if ways are not shown
     * @param line through the ghosts, from the outside to its place
     * @param words what it does last; empty: nothing is said
     */
    public record Way(List<Box> now, List<List<Box>> ghosts, List<Point> line, String words) {
        public Way {
            now = List.copyOf(now);
            ghosts = ghosts.stream().map(List::copyOf).toList();
            line = List.copyOf(line);
        }
    }

    public WayMarks(Glass glass, Typeface typeface) {
        this.glass = glass;
        this.typeface = typeface;
    }

    public List<Shape> shapes() {
        shapes.addAll(AxesCorner.shapes(glass));
        return shapes;
    }

    /** Prints on the floor of what is still to come. */
    public WayMarks coming(List<Named> units) {
        for (Named one : units) {
            if (one.box().z0() == 0) {
                Box print = one.box().face(Face.BOTTOM);
                shapes.add(new Polygon(glass.spots(Block.corners(print, Face.TOP)), null, COMING));
                name(one, print, Role.MUTED);
            }
        }
        return this;
    }

    /**
     * Names of what is in.
     *
     * @param seen whether the unit is what is seen at the middle of its top
     */
    public WayMarks in(List<Named> units, Predicate<Named> seen) {
        for (Named one : units) {
            if (seen.test(one)) {
                name(one, one.box().face(Face.TOP), Role.ON_TOP);
            }
        }
        return this;
    }

    /** The unit that is brought in, and its way. */
    public WayMarks way(Way way) {
        for (List<Box> ghost : way.ghosts()) {
            ghost.forEach(this::ghost);
        }
        if (!way.now().isEmpty()) {
            shapes.addAll(SelectionMark.selected(glass, way.now()));
        }
        List<Spot> line = glass.spots(way.line());
        if (line.size() > 1) {
            shapes.add(new Lines(List.of(line), CASING));
            shapes.add(new Lines(List.of(line), WAY));
            for (int i = 0; i < line.size(); i++) {
                letter(line.get(i), (char) ('a' + i));
            }
        }
        if (!way.words().isEmpty() && !line.isEmpty()) {
            // The words are about the last piece of the way; its end bears a letter.
            Spot end = line.get(line.size() - 1);
            tag(line.size() > 1 ? end.towards(line.get(line.size() - 2), 0.5) : end, way.words());
        }
        return this;
    }

    private void ghost(Box box) {
        for (Face face : Block.seen(glass.eye().axonometry())) {
            shapes.add(new Polygon(
                    glass.spots(Block.corners(box, face)), Role.ACCENT.colour().with(0.1), GHOST));
        }
    }

    private void letter(Spot at, char letter) {
        shapes.add(new Circle(at, glass.sized(8.5), Role.ACCENT.colour(), Pen.of(0.4, Role.PANEL.colour())));
        shapes.add(text(String.valueOf(letter), at, Weight.SEMIBOLD, Role.ON_ACCENT));
    }

    private void name(Named one, Box face, Role role) {
        Bounds room = glass.bounds(face);
        Spot middle = glass.spot(face.centre());
        for (String words : one.words()) {
            if (typeface.width(words, glass.sized(SIZE), Weight.MEDIUM) < room.width() * 0.55) {
                shapes.add(text(words, middle, Weight.MEDIUM, role));
                return;
            }
        }
    }

    private Label text(String words, Spot middle, Weight weight, Role role) {
        Spot at = middle.plus(0, glass.sized(SIZE) * Typeface.CAPITAL / 2);
        return new Label(words, at, glass.sized(SIZE), weight, Align.MIDDLE, 0, role.colour());
    }

    private void tag(Spot place, String words) {
        TagLook look = new TagLook(glass, typeface);
        Tag tag = Tag.doing(place, words);
        double wide = look.width(tag);
        double high = look.height(tag);
        double x = Math.max(2, place.x() - wide - glass.sized(26));
        double y = Math.max(glass.sized(60), place.y() - glass.sized(64));
        Bounds bounds = new Bounds(x, y, x + wide, y + high);
        shapes.addAll(look.leader(tag, bounds));
        shapes.addAll(look.panel(tag, bounds));
    }
}
