package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.sheet.TitleBlock;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.app.view.OrderedPainting;
import org.shelterwright.app.view.PictureModel;
import org.shelterwright.app.view.Projection;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.scene.Scene;

/** A small picture in the free part of a drawing, above the title block, where there is room for one. */
final class PictorialView {

    private static final double GAP = 10;
    private static final double LEAST_SHARE = 80;
    private static final double SLENDERNESS = 1.45;

    private PictorialView() {}

    /** @param taken down to where the parts list and the notes reach (mm) */
    static Optional<Shape> shape(Scene scene, Situation situation, SheetPlan plan, double taken) {
        Bounds space = plan.size().space();
        Bounds section = SheetPlan.outside(plan.section(), scene.body());
        double title = space.x1() - TitleBlock.WIDTH;
        double list = plan.listBeside() ? taken : space.y0();
        double head = GAP + SheetPlan.NAME;
        double floor = space.y1() - TitleBlock.HEIGHT - 2 * GAP;
        Bounds above = new Bounds(
                plan.listBeside() ? section.x0() : section.x1() + GAP,
                (plan.listBeside() ? Math.max(section.y1(), list) : list) + head,
                space.x1() - GAP,
                floor);
        Bounds beside = new Bounds(section.x0(), section.y1() + head, title - GAP, space.y1() - GAP);
        Bounds area = share(above) >= share(beside) ? above : beside;
        if (share(area) < LEAST_SHARE) {
            return Optional.empty();
        }
        PictureModel model = PictureModel.of(scene, situation, Axonometry.FROM_REAR_RIGHT, false);
        Projection projection = Projection.fitting(Axonometry.FROM_REAR_RIGHT, model.points(), area);
        List<Shape> shapes = new ArrayList<>(new OrderedPainting(projection).shapes(model));
        Bounds drawn = Bounds.of(projection.spots(model.points()));
        shapes.add(Lettering.bold("Pictorial view, not to scale", new Spot(drawn.x0(), drawn.y0() - 4), 2.5));
        return Optional.of(new Group("pictorial view", shapes));
    }

    /** How wide a picture of usual slenderness comes out in an area (mm). */
    private static double share(Bounds area) {
        return Math.min(area.width(), area.height() * SLENDERNESS);
    }
}
