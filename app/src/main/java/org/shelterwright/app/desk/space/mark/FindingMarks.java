package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.app.view.Block;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/** Places of findings: that of the chosen one filled, ringed and tagged, those of other broken rows with ring and sign. */
final class FindingMarks {
    private static final double SIZE = 12.5;
    private static final double WIDEST = 300;
    private static final double WIDEST_OF_LONG = 430;
    private static final int MOST_LINES = 3;

    private final Glass glass;
    private final List<Row> rows;
    private final Predicate<Row> sized;
    private final Function<Row, Optional<Box>> where;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Bounds> signs = new ArrayList<>();
    private @Nullable Tag tag;

    /**
     * @param sized whether the place of a broken row of what is moved is shown in its true size
     * @param where the place of a row; empty if it has none here
     */
    FindingMarks(Glass glass, List<Row> rows, Predicate<Row> sized, Function<Row, Optional<Box>> where) {
        this.glass = glass;
        this.rows = rows;
        this.sized = sized;
        this.where = where;
    }

    List<Shape> shapes() {
        return shapes;
    }

    /** Where signs stand. */
    List<Bounds> signs() {
        return signs;
    }

    /** The tag of the chosen finding; {@code null} if none is chosen or it has no place. */
    @Nullable
    Tag tag() {
        return tag;
    }

    /** @param selected units whose clashes are shown in their true size while something is tried out */
    void mark(@Nullable Finding chosen, Set<String> selected, Typeface typeface) {
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            boolean isChosen = chosen != null && Finding.of(row).equals(chosen);
            if (isChosen || clashes(row, selected)) {
                place(row).ifPresent(box -> fill(box, row.verdict()));
            }
            if (isChosen || row.verdict() == Verdict.BROKEN) {
                Spot at = place(row).map(this::middle).orElse(null);
                if (at != null) {
                    ring(at, row.verdict(), isChosen);
                }
                if (at != null && isChosen) {
                    tag = tag(at, row, i + 1, typeface);
                }
            }
        }
    }

    private boolean clashes(Row row, Set<String> selected) {
        return row.verdict() == Verdict.BROKEN
                && sized.test(row)
                && row.units().stream().anyMatch(selected::contains);
    }

    private Optional<Box> place(Row row) {
        return where.apply(row);
    }

    /** The middle of a place; of a high one, the lower part, where people look for the foot of a clash. */
    private Spot middle(Box box) {
        Point centre = box.centre();
        return glass.spot(new Point(centre.x(), centre.y(), box.z0() + (box.z1() - box.z0()) / 3));
    }

    /** The volume in its true size. */
    private void fill(Box box, Verdict verdict) {
        Colour colour = VerdictSign.colour(verdict);
        Pen pen = Pen.of(0.5, colour);
        for (Face face : Block.seen(glass.eye().axonometry())) {
            shapes.add(new Polygon(glass.spots(Block.corners(box, face)), colour.with(0.3), pen));
        }
    }

    /** A ring with its sign; where one stands already, that one speaks for both. */
    private void ring(Spot at, Verdict verdict, boolean chosen) {
        Bounds bounds = Bounds.around(at, glass.sized(20), glass.sized(20));
        if (!chosen && signs.stream().anyMatch(bounds::overlaps)) {
            return;
        }
        signs.add(bounds);
        Colour colour = VerdictSign.colour(verdict);
        shapes.add(
                new Circle(at, glass.sized(chosen ? 7 : 9), Role.PANEL.colour().with(0.85), Pen.of(0.45, colour)));
        shapes.addAll(VerdictSign.shapes(verdict, at, glass.sized(chosen ? 4 : 6)));
    }

    /** The whole sentence, in a wider tag if it is long; where it has no room, what it is about. */
    private Tag tag(Spot at, Row row, int number, Typeface typeface) {
        Wrap wrap = new Wrap(typeface, glass.sized(SIZE), Weight.SEMIBOLD);
        String finding = row.finding();
        String text =
                "F" + number + ", " + (finding.endsWith(".") ? finding.substring(0, finding.length() - 1) : finding);
        Tag title = Tag.finding(
                at, wrap.lines("F" + number + ", " + row.title(), glass.sized(WIDEST)), row.verdict(), null);
        List<String> lines = wrap.lines(text, glass.sized(WIDEST));
        return Tag.finding(
                at,
                lines.size() <= MOST_LINES ? lines : wrap.lines(text, glass.sized(WIDEST_OF_LONG)),
                row.verdict(),
                title);
    }
}
