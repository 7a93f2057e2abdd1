package org.shelterwright.app.desk.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.Facet;
import org.shelterwright.app.view.OrderedPainting;
import org.shelterwright.app.view.PictureModel;
import org.shelterwright.app.view.Projection;
import org.shelterwright.app.view.UnitLook;
import org.shelterwright.app.view.ZoneLook;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** How an item alone looks: as in every other picture, its front towards the viewer, its clear zones on the ground. */
final class ItemLook {
    private static final int AROUND = 150 * Lengths.MM;
    private static final String UNIT = "item";

    private ItemLook() {}

    /**
     * Draws an item.
     *
     * @param desk gives body and rules
     * @param area to be filled (mm of the drawing)
     */
    static List<Shape> shapes(Item item, Scene desk, Bounds area) {
        PlacedUnit unit = alone(item, desk);
        Situation situation = Situation.ON_STATION;
        List<Block> blocks = UnitLook.blocks(unit, situation);
        ZoneLook zones = new ZoneLook();
        zones.add(unit, situation, purpose -> true);
        List<Point> points = new ArrayList<>();
        blocks.forEach(block -> points.addAll(Block.corners(block.box())));
        zones.facets().forEach(facet -> points.addAll(facet.corners()));
        zones.traces().forEach(trace -> points.addAll(trace.points()));
        Facet ground = ground(points);
        points.addAll(ground.corners());
        PictureModel model =
                new PictureModel(List.of(ground), List.of(), zones.facets(), zones.traces(), blocks, List.of());
        return new OrderedPainting(Projection.fitting(Axonometry.FROM_REAR_RIGHT, points, area)).shapes(model);
    }

    private static PlacedUnit alone(Item item, Scene desk) {
        UnitSpec spec = new UnitSpec(UNIT, item.name(), item.id(), UNIT);
        Brief brief = Brief.named(UNIT, item.name(), desk.body().id())
                .units(List.of(spec))
                .build();
        Place place = new Place(Surface.FLOOR, null, new Pose(Point.ORIGIN, QuarterTurn.R180));
        Layout layout = Layout.empty(brief, new Parts(desk.body(), null, null, Map.of(item.id(), item)))
                .with(Placement.of(UNIT, place));
        return Scene.of(layout, desk.rules()).unit(UNIT).orElseThrow();
    }

    private static Facet ground(List<Point> points) {
        int x0 = points.stream().mapToInt(Point::x).min().orElse(0) - AROUND;
        int x1 = points.stream().mapToInt(Point::x).max().orElse(0) + AROUND;
        int y0 = points.stream().mapToInt(Point::y).min().orElse(0) - AROUND;
        int y1 = points.stream().mapToInt(Point::y).max().orElse(0) + AROUND;
        List<Point> ring = Block.corners(new Box(x0, y0, 0, x1, y1, 0), Face.TOP);
        return new Facet(ring, Role.FLOOR.colour());
    }
}
