package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.Tint;
import org.shelterwright.app.report.Issue;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** One placard a piece, to be fixed to it: mass, size, centre of mass, points for lashings and slings with what they bear. */
final class PlacardPages {
    private static final double LEFT = 22;
    private static final double TYRE = 0.42;
    private static final Pen FRAME = Pen.of(0.9, Role.TEXT.colour());
    private static final Pen EYE = Pen.of(0.35, Role.ACCENT.colour());

    private final Typeface typeface;
    private final JourneyIssue issue;

    PlacardPages(Typeface typeface, JourneyIssue issue) {
        this.typeface = typeface;
        this.issue = issue;
    }

    List<Drawing> pages() {
        List<Drawing> pages = new ArrayList<>();
        for (Piece piece : issue.journey().pieces()) {
            issue.scene()
                    .shape(piece.id())
                    .ifPresent(shape -> pages.add(
                            page(new PlacedPiece(shape, new Stand(shape.id(), Pose.at(Point.ORIGIN), false)))));
        }
        return pages;
    }

    private Drawing page(PlacedPiece piece) {
        double width = SheetSize.A4_LYING.width();
        double height = SheetSize.A4_LYING.height();
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(new Bounds(12, 12, width - 12, height - 12), Role.RAISED.colour(), FRAME));
        shapes.add(Lettering.bold(piece.name(), new Spot(LEFT, 32), 9));
        Double mass = piece.shape().massKg();
        shapes.add(Lettering.bold(
                mass == null ? "Mass not known: weigh it" : Numerals.of(mass, 0) + Numerals.GAP + "kg",
                new Spot(LEFT, 54),
                14));
        if (mass != null) {
            shapes.add(Lettering.muted(
                    "calculated as it travels, ± " + Numerals.of(piece.shape().uncertaintyKg(), 0)
                            + " kg; weigh before the first lift",
                    new Spot(LEFT, 62),
                    2.5));
        }
        Box box = piece.box();
        line(
                shapes,
                74,
                "Length × width × height",
                Numerals.mm(box.x1()) + " × " + Numerals.mm(box.y1()) + " × " + Numerals.mm(box.z1()) + " mm");
        Point centre = piece.centre();
        line(
                shapes,
                84,
                "Centre of mass",
                centre == null
                        ? "not known"
                        : Numerals.of(centre.x() / 1000.0, 0) + " from the rear, " + Numerals.of(centre.y() / 1000.0, 0)
                                + " from the right, " + Numerals.of(centre.z() / 1000.0, 0) + " above the ground, mm");
        line(shapes, 94, "Points", points(piece));
        sketch(shapes, piece, new Bounds(LEFT, 104, width - 22, height - 32));
        String foot = issue.name() + ", " + issue.particulars().date() + ". " + Issue.SHORT_CAUTION;
        shapes.add(Lettering.muted(foot, new Spot(LEFT, height - 18), 2));
        return new Drawing("Placard, " + piece.name(), width, height, shapes);
    }

    private void line(List<Shape> shapes, double y, String name, String value) {
        shapes.add(Lettering.muted(name, new Spot(LEFT, y), 3));
        String fitting = new Wrap(typeface, Typeface.sizeOf(3.5), Weight.MEDIUM).shortened(value, 200);
        shapes.add(Lettering.of(fitting, new Spot(LEFT + 52, y), 3.5).with(Weight.MEDIUM));
    }

    private static String points(PlacedPiece piece) {
        long lifting = piece.eyes().stream()
                .filter(eye -> eye.use() != Provision.Use.TIE_DOWN)
                .count();
        long tie = piece.eyes().stream()
                .filter(eye -> eye.use() != Provision.Use.LIFTING)
                .count();
        if (piece.eyes().isEmpty()) {
            return "none: lift on forks or in a net, tie down over the top";
        }
        return tie + " for lashings" + least(piece, Provision.Use.LIFTING) + "; "
                + (lifting == 0
                        ? "none for lifting: do not lift"
                        : lifting + " for lifting" + least(piece, Provision.Use.TIE_DOWN));
    }

    /** The least rating of points that are not only for another use. */
    private static String least(PlacedPiece piece, Provision.Use other) {
        double least = Double.MAX_VALUE;
        for (Provision eye : piece.eyes()) {
            Double rating = eye.ratingN();
            if (eye.use() != other && rating != null) {
                least = Math.min(least, rating);
            }
        }
        return least == Double.MAX_VALUE ? "" : ", each " + Numerals.of(least / 1000, 0) + Numerals.GAP + "kN or more";
    }

    private void sketch(List<Shape> shapes, PlacedPiece piece, Bounds paper) {
        Box box = piece.box();
        double gap = 16;
        double wide = CarPaper.m(box.x1()) + CarPaper.m(box.y1());
        double scale = Math.min((paper.width() - gap) / wide, (paper.height() - 8) / CarPaper.m(box.z1()));
        double ground = paper.y1() - 4;
        double side = paper.x0();
        double end = side + scale * CarPaper.m(box.x1()) + gap;
        List<Box> solids = piece.solids();
        for (int place : piece.axlePlaces()) {
            double radius = scale * TYRE;
            shapes.add(new Circle(
                    new Spot(side + scale * CarPaper.m(place), ground - radius),
                    radius,
                    Tint.RUBBER.side(),
                    CarPaper.EDGE));
        }
        for (int i = 0; i < solids.size(); i++) {
            Box one = solids.get(i);
            Tint tint = PieceTint.of(piece, i);
            Pen pen = i == solids.size() - 1 ? CarPaper.SILHOUETTE : CarPaper.EDGE;
            double top = ground - scale * CarPaper.m(one.z1());
            double bottom = ground - scale * CarPaper.m(one.z0());
            shapes.add(Polygon.of(
                    new Bounds(side + scale * CarPaper.m(one.x0()), top, side + scale * CarPaper.m(one.x1()), bottom),
                    tint.side(),
                    pen));
            double width = CarPaper.m(box.y1());
            shapes.add(Polygon.of(
                    new Bounds(
                            end + scale * (width - CarPaper.m(one.y1())),
                            top,
                            end + scale * (width - CarPaper.m(one.y0())),
                            bottom),
                    tint.end(),
                    pen));
        }
        for (Provision eye : piece.eyes()) {
            double y = ground - scale * CarPaper.m(eye.at().z());
            shapes.add(new Circle(
                    new Spot(side + scale * CarPaper.m(eye.at().x()), y), 1.1, Role.RAISED.colour(), EYE));
            shapes.add(new Circle(
                    new Spot(
                            end
                                    + scale
                                            * (CarPaper.m(box.y1())
                                                    - CarPaper.m(eye.at().y())),
                            y),
                    1.1,
                    Role.RAISED.colour(),
                    EYE));
        }
        Point centre = piece.centre();
        if (centre != null) {
            double y = ground - scale * CarPaper.m(centre.z());
            shapes.addAll(CarPaper.centre(new Spot(side + scale * CarPaper.m(centre.x()), y)));
            shapes.addAll(CarPaper.centre(new Spot(end + scale * (CarPaper.m(box.y1()) - CarPaper.m(centre.y())), y)));
        }
        shapes.add(Lettering.muted("right side, front to the right", new Spot(side, ground + 4), 2));
        shapes.add(
                Lettering.muted("from the rear", new Spot(end, ground + 4), 2).with(Align.START));
    }
}
