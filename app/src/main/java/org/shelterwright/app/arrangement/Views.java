package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.FlatView;
import org.shelterwright.app.view.Sheeted;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** The five views of a general arrangement, with dimensions from the datum walls and item references. */
final class Views {

    private static final double LINE = 6.5;
    private static final double PALE = 0.45;

    private final Typeface typeface;
    private final Scene scene;
    private final Situation situation;
    private final SheetPlan plan;
    private final Map<String, Integer> numbers;
    private final @Nullable Point centre;
    private final FreeSpace space;
    private final List<Shape> shapes = new ArrayList<>();

    Views(
            Typeface typeface,
            Scene scene,
            Situation situation,
            SheetPlan plan,
            Map<String, Integer> numbers,
            @Nullable Point centre) {
        this.typeface = typeface;
        this.scene = scene;
        this.situation = situation;
        this.plan = plan;
        this.numbers = numbers;
        this.centre = centre;
        this.space = new FreeSpace(plan.size().space());
    }

    List<Shape> shapes() {
        int section = SectionPlane.of(scene, situation);
        view(plan.fromRight(), null, "From the right, right wall cut away", heights(plan.fromRight(), false));
        view(plan.fromRear(), null, "From the rear, rear wall cut away", List.of());
        view(plan.section(), -section, "A–A", List.of());
        view(plan.fromLeft(), null, "B  From the left, left wall cut away", heights(plan.fromLeft(), true));
        List<Shape> chains = new ArrayList<>(along(true));
        chains.addAll(along(false));
        chains.addAll(across());
        marks(section);
        String where = situation == Situation.ON_THE_ROAD ? ", on the road" : "";
        view(plan.fromAbove(), null, "From above, roof cut away" + where, chains);
        return shapes;
    }

    private void view(Sheeted sheeted, @Nullable Integer cut, String name, List<Shape> dimensions) {
        FlatView view = new FlatView(scene, situation, sheeted, PALE, cut);
        boolean above = sheeted == plan.fromAbove();
        List<Shape> parts = new ArrayList<>(view.shapes());
        parts.add(new Group("dimensions", dimensions));
        Point mass = centre;
        if (mass != null && cut == null) {
            parts.add(new Group("centre of mass", CentroidMark.shapes(sheeted.spot(mass))));
            space.take(Bounds.around(sheeted.spot(mass), CentroidMark.SIZE, CentroidMark.SIZE));
        }
        Bounds outside = SheetPlan.outside(sheeted, scene.body());
        Label title = Lettering.bold(
                name,
                new Spot(outside.x0(), outside.y0() - (above ? SheetPlan.DIMENSIONS + swing(Face.LEFT) : 0) - 2.6),
                2.5);
        parts.add(title);
        space.take(typeface.bounds(title));
        Balloons balloons = new Balloons(space, view);
        balloons.setOn(numbers);
        if (above) {
            balloons.setBeside(numbers, walls(sheeted));
        }
        parts.add(balloons.shape());
        shapes.add(new Group(name, parts));
    }

    /** Distances from the rear wall: of the units at the left wall above the plan, of those at the right wall below. */
    private List<Shape> along(boolean left) {
        Sheeted view = plan.fromAbove();
        Bounds outside = SheetPlan.outside(view, scene.body());
        int middle = scene.body().inside().y() / 2;
        RunningDimensions chain = new RunningDimensions(
                typeface,
                space,
                false,
                view.origin().x(),
                1e-3 / view.scale(),
                left ? outside.y0() - LINE - swing(Face.LEFT) : outside.y1() + LINE + swing(Face.RIGHT),
                left ? -1 : 1);
        for (PlacedUnit unit : dimensioned()) {
            Box box = unit.outline(situation);
            if (box.centre().y() > middle == left) {
                Bounds bounds = view.bounds(box);
                chain.add(box.x0(), left ? Math.min(bounds.y0(), outside.y0()) : Math.max(bounds.y1(), outside.y1()));
            }
        }
        chain.add(scene.body().inside().x(), left ? outside.y0() : outside.y1());
        return chain.shapes();
    }

    /** Distances from the right wall, at the front of the plan. */
    private List<Shape> across() {
        Sheeted view = plan.fromAbove();
        Bounds outside = SheetPlan.outside(view, scene.body());
        RunningDimensions chain = new RunningDimensions(
                typeface,
                space,
                true,
                view.origin().y(),
                -1e-3 / view.scale(),
                outside.x1() + LINE + swing(Face.FRONT),
                1);
        for (PlacedUnit unit : dimensioned()) {
            chain.add(unit.outline(situation).y0(), outside.x1());
        }
        chain.add(scene.body().inside().y(), outside.x1());
        return chain.shapes();
    }

    /** Heights above the floor of what hangs on walls and roof, on one side of the body. */
    private List<Shape> heights(Sheeted view, boolean left) {
        Bounds outside = SheetPlan.outside(view, scene.body());
        int middle = scene.body().inside().y() / 2;
        RunningDimensions chain = new RunningDimensions(
                typeface, space, true, view.origin().y(), -1e-3 / view.scale(), outside.x0() - LINE, -1);
        for (PlacedUnit unit : dimensioned()) {
            Box box = unit.outline(situation);
            if (box.centre().y() > middle == left) {
                chain.add(box.z0(), outside.x0());
            }
        }
        chain.add(scene.body().inside().z(), outside.x0());
        return chain.shapes();
    }

    /** The cut walls of the plan. */
    private List<Bounds> walls(Sheeted view) {
        Bounds o = SheetPlan.outside(view, scene.body());
        Bounds in = view.bounds(scene.body().inside().box());
        return List.of(
                new Bounds(o.x0(), o.y0(), in.x0(), o.y1()),
                new Bounds(in.x1(), o.y0(), o.x1(), o.y1()),
                new Bounds(o.x0(), o.y0(), o.x1(), in.y0()),
                new Bounds(o.x0(), in.y1(), o.x1(), o.y1()));
    }

    /** How much farther out dimensions stand where a door swings (mm). */
    private double swing(Face wall) {
        double swing = SheetPlan.swing(scene.body(), wall, plan.scale());
        return swing > 0 ? swing - SheetPlan.SAVED : 0;
    }

    /** Units that are dimensioned in the views; those on or under another unit are found in the parts list. */
    private List<PlacedUnit> dimensioned() {
        return scene.units().stream()
                .filter(unit -> unit.place(situation).host() == null)
                .toList();
    }

    private void marks(int section) {
        Sheeted view = plan.fromAbove();
        Bounds outside = SheetPlan.outside(view, scene.body());
        double x = view.spot(new Point(section, 0, 0)).x();
        shapes.add(new Group("cutting plane", new CuttingPlane(typeface, space).shapes(x, outside.y0(), outside.y1())));
        Spot tip = new Spot(outside.x1() + 4, outside.y0() - 3);
        shapes.add(new Group("view arrow", CuttingPlane.arrowB(tip)));
        space.take(Bounds.around(tip.plus(2.5, -5), 8, 12));
    }
}
