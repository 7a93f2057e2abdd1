package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.Tint;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.catalog.transit.Step;
import org.shelterwright.layouts.ledger.transport.place.OutlineFit;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** The end view at the section where the outline is tightest: the outline as a fence, the piece, and how far a curve throws it. */
public final class EndView {
    /** Share of the width that is left for figures beside the outline. */
    private static final double BESIDE = 0.4;

    private final PlacedLoad load;
    private final PlacedPiece piece;
    private final Outline outline;
    private final OutlineFit fit;
    private final double scale;
    private final double middle;
    private final double ground;
    private final List<Shape> shapes = new ArrayList<>();

    private EndView(PlacedLoad load, PlacedPiece piece, Outline outline, OutlineFit fit, Bounds paper) {
        this.load = load;
        this.piece = piece;
        this.outline = outline;
        this.fit = fit;
        double high = CarPaper.m(Math.max(outline.highest(), fit.high()));
        double wide = 2 * CarPaper.m(Math.max(outline.widest(), fit.halfWidth() + fit.throwUm()));
        double beside = Math.min(24, BESIDE * paper.width());
        this.scale = Math.min((paper.width() - beside) / wide, (paper.height() - 12) / high);
        this.middle = paper.centre().x();
        this.ground = paper.y1() - 7;
    }

    /**
     * The section where a piece is tightest.
     *
     * @param paper where it goes (mm)
     * @param explained whether a line below says from where it is seen
     */
    public static List<Shape> shapes(
            PlacedLoad load, PlacedPiece piece, Outline outline, OutlineFit fit, Bounds paper, boolean explained) {
        EndView view = new EndView(load, piece, outline, fit, paper);
        List<Shape> shapes = view.shapes();
        if (explained) {
            view.explain();
        }
        return shapes;
    }

    private List<Shape> shapes() {
        car();
        solids();
        fence();
        thrown();
        tag();
        return shapes;
    }

    private void car() {
        double half = CarPaper.m(load.car().deck().width()) / 2;
        double floor = floor();
        shapes.add(Lines.of(Pen.of(0.35, Role.LINES.colour()), spot(-2.1, 0), spot(2.1, 0)));
        if (load.car().kind().wagon()) {
            for (int side : new int[] {-1, 1}) {
                shapes.add(Polygon.of(
                        box(side * 0.76 - 0.07, 0, side * 0.76 + 0.07, 0.92), Tint.STEEL.end(), CarPaper.EDGE));
            }
            shapes.add(Polygon.of(box(-0.9, 0.35, 0.9, 0.55), Tint.STEEL.side(), CarPaper.EDGE));
        }
        shapes.add(Polygon.of(box(-half, floor - 0.42, half, floor - 0.12), Tint.STEEL.end(), CarPaper.EDGE));
        shapes.add(Polygon.of(box(-half, floor - 0.12, half, floor), Tint.TIMBER.side(), CarPaper.SILHOUETTE));
    }

    private void solids() {
        List<Box> solids = piece.solids();
        int width = load.car().deck().width() / 2;
        for (int i = 0; i < solids.size(); i++) {
            Box one = solids.get(i);
            if (one.x0() > fit.at() || one.x1() < fit.at()) {
                continue;
            }
            shapes.add(Polygon.of(
                    box(
                            CarPaper.m(width - one.y1()),
                            floor() + CarPaper.m(one.z0()),
                            CarPaper.m(width - one.y0()),
                            floor() + CarPaper.m(one.z1())),
                    PieceTint.of(piece, i).side(),
                    CarPaper.SILHOUETTE));
        }
    }

    /** Seen from the rear: left is on the left. */
    private void fence() {
        List<Spot> corners = new ArrayList<>();
        List<Step> steps = outline.steps();
        for (Step step : steps) {
            corners.add(spot(-CarPaper.m(step.halfWidth()), CarPaper.m(step.height())));
        }
        for (int i = steps.size() - 1; i >= 0; i--) {
            corners.add(spot(
                    CarPaper.m(steps.get(i).halfWidth()),
                    CarPaper.m(steps.get(i).height())));
        }
        shapes.addAll(CarPaper.fence(corners));
        shapes.add(Lines.of(CarPaper.CENTROID, spot(0, 0), spot(0, CarPaper.m(outline.highest()) + 0.15)));
    }

    private void thrown() {
        if (fit.throwUm() == 0) {
            return;
        }
        double reach = CarPaper.m(fit.halfWidth() + fit.throwUm());
        double low = floor() + CarPaper.m(fit.solid().z0());
        double high = floor() + CarPaper.m(fit.solid().z1());
        for (int side : new int[] {-1, 1}) {
            shapes.add(Lines.of(CarPaper.THROWN, spot(side * reach, low), spot(side * reach, high)));
        }
    }

    private void tag() {
        double side = fit.left() ? -1 : 1;
        Spot place = fit.upward()
                ? spot(0, CarPaper.m(fit.high()))
                : spot(side * CarPaper.m(fit.halfWidth()), CarPaper.m(fit.high()));
        boolean fouls = fit.clearance() < 0;
        Pen pen = Pen.of(0.35, fouls ? Role.BROKEN.colour() : Role.TEXT.colour());
        Spot text = new Spot(middle + side * (scale * CarPaper.m(outline.widest()) + 4), place.y() + 6);
        shapes.add(Lines.of(pen, place, text.plus(-side, -1)));
        shapes.add(new Circle(place, 1.1, null, pen));
        shapes.add(Lettering.in(
                        Lettering.bold(Lengths.rounded(fit.clearance(), 0).replace('-', Numerals.MINUS), text, 2.5),
                        pen.colour())
                .with(fit.left() ? Align.END : Align.START));
    }

    private void explain() {
        shapes.add(Lettering.muted(
                        "seen from the rear, mm; dashed: thrown in the curve",
                        new Spot(middle, ground + 5),
                        CarPaper.SMALL)
                .with(Align.MIDDLE));
    }

    private double floor() {
        Integer highest = load.car().deck().highest();
        return highest == null ? 0 : CarPaper.m(highest);
    }

    private Bounds box(double y0, double z0, double y1, double z1) {
        Spot a = spot(y0, z0);
        Spot b = spot(y1, z1);
        return CarPaper.box(a.x(), a.y(), b.x(), b.y());
    }

    private Spot spot(double right, double up) {
        return new Spot(middle + scale * right, ground - scale * up);
    }
}
