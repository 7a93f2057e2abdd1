package org.shelterwright.app.desk.inside;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.elevation.PlaceView;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.edit.Edit;
import org.shelterwright.layouts.edit.PutPiece;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Posture;

/** A stowage place from above and from the front. A piece that is dragged catches on the sides of the place and of the others. */
final class PlaceDrawing implements InsideDrawing {
    private static final double MARGIN = 6;
    private static final double GAP = 6;
    private static final double TEXT = 2.1;
    private static final double CATCH = 2;
    private static final int GRID = 5_000;

    private final InsideDesk desk;
    private final Stowage stowage;
    private final Typeface typeface;
    private final List<PlaceView> views;

    PlaceDrawing(InsideDesk desk, Stowage stowage, Bounds paper, Typeface typeface) {
        this.desk = desk;
        this.stowage = stowage;
        this.typeface = typeface;
        Bounds all = paper.grown(-MARGIN);
        double x = all.centre().x();
        double y = all.centre().y();
        List<PlaceView> beside = List.of(
                view(new Bounds(all.x0(), all.y0(), x - GAP / 2, all.y1()), Axis.X),
                view(new Bounds(x + GAP / 2, all.y0(), all.x1(), all.y1()), Axis.Z));
        List<PlaceView> below = List.of(
                view(new Bounds(all.x0(), all.y0(), all.x1(), y - GAP / 2), Axis.X),
                view(new Bounds(all.x0(), y + GAP / 2, all.x1(), all.y1()), Axis.Z));
        views = least(below) > least(beside) ? below : beside;
    }

    private static double least(List<PlaceView> views) {
        return views.stream().mapToDouble(PlaceView::scale).min().orElse(0);
    }

    /** A view in the middle of its paper, its title close below it. */
    private PlaceView view(Bounds paper, Axis up) {
        PlaceView whole = new PlaceView(stowage, paper, up, TEXT);
        double height = whole.scale() * stowage.inside().extent(up) + 3.3 * TEXT;
        return new PlaceView(stowage, Bounds.around(paper.centre(), paper.width(), height), up, TEXT);
    }

    @Override
    public List<Shape> shapes() {
        List<Shape> shapes = new ArrayList<>();
        for (PlaceView view : views) {
            String title = view.up() == Axis.X ? "from above" : "from the front";
            Wrap wrap = new Wrap(typeface, Typeface.sizeOf(TEXT), Weight.REGULAR);
            shapes.addAll(view.shapes(
                    title,
                    desk.stowed(),
                    piece -> wrap.shortened(
                            piece.name(), view.bounds(piece.box()).width() - 1)));
        }
        return shapes;
    }

    @Override
    public List<Bounds> bounds(Held held) {
        return views.stream().map(view -> view.bounds(held.box())).toList();
    }

    @Override
    public Optional<Held> pieceAt(Spot spot) {
        for (PlaceView view : views) {
            List<InPlace> order = view.order(desk.stowed());
            for (int i = order.size() - 1; i >= 0; i--) {
                if (view.bounds(order.get(i).box()).contains(spot)) {
                    return Optional.of(order.get(i));
                }
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<Edit> dragged(String piece, @Nullable Spot from, Spot to) {
        Piece kind = desk.kind(piece).orElse(null);
        Inside open = desk.opened().get();
        Spot begun = from == null ? to : from;
        PlaceView view = views.stream()
                .filter(one -> one.bounds(stowage.inside()).grown(GAP / 2).contains(begun))
                .findFirst()
                .orElse(null);
        if (kind == null || kind.loose() == null || open == null || view == null) {
            return Optional.empty();
        }
        InPlace before = atRest().stream()
                .filter(one -> one.id().equals(piece))
                .findFirst()
                .orElse(null);
        Posture posture = before == null ? Posture.AS_IS : before.posture();
        Box box = before == null || from == null
                ? centred(view, Box.of(stowage.inside().low(), posture.apply(kind.size())), to)
                : moved(view, before.box(), (to.x() - from.x()) / view.scale(), (to.y() - from.y()) / view.scale());
        Point at = new Point(
                caught(box, Axis.X, piece, view), caught(box, Axis.Y, piece, view), caught(box, Axis.Z, piece, view));
        PiecePlace place = PiecePlace.stowed(piece, open.unit(), open.place(), at, posture)
                .withKept(before != null && before.place().kept());
        return Optional.of(new PutPiece(place));
    }

    private List<InPlace> atRest() {
        return desk.heldAtRest().stream()
                .filter(InPlace.class::isInstance)
                .map(InPlace.class::cast)
                .toList();
    }

    private static Box centred(PlaceView view, Box box, Spot to) {
        Spot middle = view.bounds(box).centre();
        return moved(view, box, (to.x() - middle.x()) / view.scale(), (to.y() - middle.y()) / view.scale());
    }

    /** Down the pane lies x from above, and -z from the front. */
    private static Box moved(PlaceView view, Box box, double across, double down) {
        int y = (int) Math.round(across);
        int other = (int) Math.round(down);
        return view.up() == Axis.X ? box.moved(new Point(other, y, 0)) : box.moved(new Point(0, y, -other));
    }

    /** The low end along an axis: on a side that is near, or on the grid; within the place. */
    private int caught(Box box, Axis axis, String piece, PlaceView view) {
        Box inside = stowage.inside();
        int length = box.extent(axis);
        int low = box.low(axis);
        if (axis != Axis.Y && axis != view.up()) {
            return low;
        }
        int best = inside.low(axis) + Math.round((low - inside.low(axis)) / (float) GRID) * GRID;
        double nearest = CATCH / view.scale();
        List<Integer> stops = new ArrayList<>(List.of(inside.low(axis), inside.high(axis) - length));
        for (InPlace other : atRest()) {
            if (!other.id().equals(piece)) {
                stops.addAll(List.of(
                        other.box().low(axis),
                        other.box().high(axis),
                        other.box().low(axis) - length,
                        other.box().high(axis) - length));
            }
        }
        for (int stop : stops) {
            if (Math.abs(stop - low) < nearest) {
                nearest = Math.abs(stop - low);
                best = stop;
            }
        }
        int most = Math.max(inside.low(axis), inside.high(axis) - length);
        return Math.max(inside.low(axis), Math.min(most, best));
    }
}
