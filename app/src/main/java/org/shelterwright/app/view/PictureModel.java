package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * All that a picture of a layout shows in space, whoever paints it.
 *
 * @param ground patches on the ground, before everything else
 * @param shell floor and far walls
 * @param facets patches on floor and walls
 * @param traces lines on floor and walls
 * @param blocks units, and solids of the body among them
 */
public record PictureModel(
        List<Facet> ground, List<Block> shell, List<Facet> facets, List<Trace> traces, List<Block> blocks) {

    /** What a scene shows in a situation, seen from a side. */
    public static PictureModel of(Scene scene, Situation situation, Axonometry view) {
        RoomLook room = new RoomLook(scene.body(), view);
        ZoneLook zones = new ZoneLook();
        List<Block> blocks = new ArrayList<>(room.solids());
        for (PlacedUnit unit : scene.units()) {
            zones.add(unit, situation);
            blocks.addAll(UnitLook.blocks(unit, situation));
        }
        List<Facet> facets = new ArrayList<>(room.facets());
        facets.addAll(zones.facets());
        List<Trace> traces = new ArrayList<>(room.traces());
        traces.addAll(zones.traces());
        return new PictureModel(List.of(room.shadow()), room.shell(), facets, traces, blocks);
    }

    /** Points between which everything lies. */
    public List<Point> points() {
        List<Point> points = new ArrayList<>();
        shell.forEach(block -> points.addAll(Block.corners(block.box())));
        blocks.forEach(block -> points.addAll(Block.corners(block.box())));
        facets.forEach(facet -> points.addAll(facet.corners()));
        return points;
    }
}
