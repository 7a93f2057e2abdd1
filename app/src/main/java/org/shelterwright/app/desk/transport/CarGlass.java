package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.space.Viewpoint;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.mark.CarMarks;
import org.shelterwright.app.desk.space.mark.Glass;
import org.shelterwright.app.desk.space.mark.WayMarks;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.journey.EndView;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.transport.securing.Rope;
import org.shelterwright.layouts.transport.scene.CarStatics;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** What lies over the car at this moment: names, selection, findings, wheel loads, letters of lashings, the end view. */
final class CarGlass {
    private static final double END_WIDE = 218;
    private static final double END_LEAST = 150;
    private static final double END_SHARE = 0.2;
    private static final double END_HIGH = 1.08;
    private static final double INSET = 14;
    private static final double LEAST_WIDE = 640;
    private static final double LEAST_HIGH = 420;

    private final JourneySession session;
    private final Viewpoint viewpoint;
    private final Overlays overlays;
    private final DeckPointing pointing;
    private final Theme theme;
    private final Typeface typeface = new Typeface();

    CarGlass(JourneySession session, Viewpoint viewpoint, Overlays overlays, DeckPointing pointing, Theme theme) {
        this.session = session;
        this.viewpoint = viewpoint;
        this.overlays = overlays;
        this.pointing = pointing;
        this.theme = theme;
    }

    List<Shape> shapes() {
        PlacedLoad load = session.load().orElse(null);
        LegScene leg = session.leg().orElse(null);
        Focus focus = session.focus().get();
        Ledger ledger = session.legLedger().orElse(null);
        if (load == null || leg == null || focus == null || ledger == null) {
            return List.of();
        }
        Eye eye = viewpoint.now();
        Glass glass = new Glass(eye, theme.textPercent().get() / 100.0);
        List<Shape> shapes = new ArrayList<>(names(glass, load));
        CarMarks marks =
                new CarMarks(glass, typeface, ray -> DeckPicker.first(load, ray).isPresent());
        outlines(marks, load, focus.pieces());
        if (overlays.lashings().get()) {
            letters(marks, leg, load, eye, focus.pieces());
        }
        if (overlays.wheels().get()) {
            wheels(marks, load, eye);
        }
        if (overlays.centres().get()) {
            centres(marks, load);
        }
        List<Shape> end = overlays.outline().get() ? end(marks, glass, leg, load) : List.of();
        marks.findings(
                ledger.rows(),
                row -> session.now().map(JourneyStanding::tryingOut).orElse(false) && clash(row, load),
                row -> where(row, load),
                focus.finding(),
                focus.pieces());
        pointing.catches().forEach(marks::caught);
        shapes.addAll(marks.shapes());
        shapes.addAll(end);
        return shapes;
    }

    private List<Shape> names(Glass glass, PlacedLoad load) {
        List<WayMarks.Named> names = load.pieces().stream()
                .map(piece ->
                        new WayMarks.Named(piece.id(), top(piece), List.of(piece.name(), Shortening.of(piece.name()))))
                .toList();
        return new WayMarks(glass, typeface)
                .in(names, one -> seen(load, one, glass.eye()))
                .shapes();
    }

    /** The solid on which the name stands: the highest of the large ones. */
    private static Box top(PlacedPiece piece) {
        long most = piece.solids().stream().mapToLong(CarGlass::area).max().orElse(0);
        return piece.solids().stream()
                .filter(solid -> area(solid) * 3 >= most)
                .max(Comparator.comparingInt(Box::z1).thenComparingLong(CarGlass::area))
                .orElse(piece.box());
    }

    private static long area(Box solid) {
        return ((long) solid.x1() - solid.x0()) * ((long) solid.y1() - solid.y0());
    }

    private static boolean seen(PlacedLoad load, WayMarks.Named one, Eye eye) {
        Point at = one.box().face(Face.TOP).centre();
        Eye.Seen seen = eye.project(new javafx.geometry.Point3D(at.x() / 1e3, at.y() / 1e3, at.z() / 1e3));
        return DeckPicker.first(load, eye.ray(seen.x(), seen.y()))
                .filter(met -> met.piece().id().equals(one.unit()))
                .isPresent();
    }

    private void outlines(CarMarks marks, PlacedLoad load, Set<String> chosen) {
        for (PlacedPiece piece : load.pieces()) {
            if (chosen.contains(piece.id())) {
                marks.selected(piece.solids());
            } else if (piece.id().equals(pointing.hovered())) {
                marks.hovered(piece.solids());
            }
        }
    }

    /** Letters at the feet of lashings on the near side; of the selected pieces, or of all where there are few. */
    private static void letters(CarMarks marks, LegScene leg, PlacedLoad load, Eye eye, Set<String> chosen) {
        boolean right = eye.towards().getY() < 0;
        for (Rope rope : Rope.of(leg, load)) {
            boolean asked = chosen.isEmpty() || rope.lashing().what().stream().anyMatch(chosen::contains);
            Point foot2 = rope.foot2();
            Point near = foot2 == null || (rope.foot().y() < foot2.y()) == right ? rope.foot() : foot2;
            if (asked && (near.y() * 2 < load.car().deck().width()) == right) {
                marks.letter(near, rope.lashing().key());
            }
        }
    }

    private static void wheels(CarMarks marks, PlacedLoad load, Eye eye) {
        if (load.unknown().isPresent()) {
            return;
        }
        boolean right = eye.towards().getY() < 0;
        Integer highest = load.car().deck().highest();
        CarStatics.of(load)
                .ifPresent(statics -> statics.groups()
                        .forEach(group -> marks.wheels(
                                new Point(
                                        group.group().x(),
                                        right ? 0 : load.car().deck().width(),
                                        highest == null ? 0 : -highest),
                                group.group().name() + ", " + Numerals.of(group.kg() / 1000, 1) + Numerals.GAP + "t")));
    }

    private static void centres(CarMarks marks, PlacedLoad load) {
        for (PlacedPiece piece : load.pieces()) {
            Point centre = piece.centre();
            if (centre != null) {
                marks.centre(centre, new Point(centre.x(), centre.y(), 0));
            }
        }
    }

    private static boolean concerns(Row row, PlacedLoad load) {
        return row.units().contains(load.id())
                || row.units().stream().anyMatch(unit -> load.piece(unit).isPresent());
    }

    /** Whether the place of a row is where things clash, and not all of a piece or of the load. */
    private static boolean clash(Row row, PlacedLoad load) {
        Box place = row.place();
        return place != null
                && !load.hull().equals(Optional.of(place))
                && load.pieces().stream().noneMatch(piece -> piece.box().equals(place));
    }

    private static Optional<Box> where(Row row, PlacedLoad load) {
        if (!concerns(row, load)) {
            return Optional.empty();
        }
        return Optional.ofNullable(row.place())
                .or(() -> row.units().stream()
                        .flatMap(unit -> load.piece(unit).stream())
                        .map(PlacedPiece::box)
                        .findFirst());
    }

    /** The section where the outline is tightest, on a panel at the lower right; left out where the view is small. */
    private List<Shape> end(CarMarks marks, Glass glass, LegScene leg, PlacedLoad load) {
        OutlineLook.Tight tight = OutlineLook.tightest(leg, load).orElse(null);
        Eye eye = glass.eye();
        if (tight == null || eye.width() < LEAST_WIDE || eye.high() < LEAST_HIGH) {
            return List.of();
        }
        double px = 1 / ScreenCanvas.PIXELS;
        double wide = Math.max(END_LEAST, Math.min(END_WIDE, END_SHARE * eye.width()));
        Bounds panel = new Bounds(
                (eye.width() - INSET - wide) * px,
                (eye.high() - INSET - END_HIGH * wide) * px,
                (eye.width() - INSET) * px,
                (eye.high() - INSET) * px);
        marks.keepFree(panel);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(panel, Role.PANEL.colour(), Pen.of(0.25, Role.LINE.colour())));
        double size = glass.sized(12);
        String name = new Wrap(typeface, size, Weight.SEMIBOLD)
                .shortened(tight.piece().name(), panel.width() - 18 * px);
        shapes.add(new Label(
                name,
                new Spot(panel.x0() + 10 * px, panel.y0() + 18 * px),
                size,
                Weight.SEMIBOLD,
                Align.START,
                0,
                Role.TEXT.colour()));
        shapes.add(new Label(
                Lengths.rounded(tight.fit().at(), 0)
                        + (wide < END_WIDE ? " along the car" : " along, seen from the rear"),
                new Spot(panel.x0() + 10 * px, panel.y0() + 33 * px),
                glass.sized(11),
                Weight.REGULAR,
                Align.START,
                0,
                Role.MUTED.colour()));
        Bounds paper = new Bounds(panel.x0() + 3, panel.y0() + 42 * px, panel.x1() - 3, panel.y1() - 3);
        shapes.addAll(EndView.shapes(load, tight.piece(), leg.outline().orElseThrow(), tight.fit(), paper, false));
        return shapes;
    }
}
