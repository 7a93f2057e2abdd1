package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Hatch;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * A layout seen square to one of its walls or its roof, with that wall or roof cut away, or cut farther in.
 *
 * <p>Blocks are painted from the farthest to the nearest; cuboids that do not run into each other never hide each other
 * wrongly that way.
 */
public final class FlatView {

    private static final double CUT_PITCH = 1.6;
    private static final int MOST_RAILS = 4;

    private final Scene scene;
    private final Situation situation;
    private final Predicate<String> shown;
    private final Sheeted sheeted;
    private final double pale;
    private final @Nullable Integer cut;
    private final List<Block> blocks = new ArrayList<>();

    /**
     * @param pale share of white in the tints of units
     * @param cut nearness of the cutting plane (µm, as {@link Aspect#nearness}); {@code null}: just inside the near wall
     */
    public FlatView(Scene scene, Situation situation, Sheeted sheeted, double pale, @Nullable Integer cut) {
        this(scene, situation, sheeted, pale, cut, unit -> true);
    }

    /** @param shown which units are drawn, with their zones, by id */
    public FlatView(
            Scene scene,
            Situation situation,
            Sheeted sheeted,
            double pale,
            @Nullable Integer cut,
            Predicate<String> shown) {
        this.shown = shown;
        this.scene = scene;
        this.situation = situation;
        this.sheeted = sheeted;
        this.pale = pale;
        this.cut = cut;
        scene.body()
                .intrusions()
                .forEach(in -> blocks.add(
                        new Block("", in.box(), Shade.of(org.shelterwright.app.look.Tint.ENAMEL), List.of())));
        scene.units().stream()
                .filter(unit -> shown.test(unit.id()))
                .forEach(unit -> blocks.addAll(UnitLook.blocks(unit, situation)));
        blocks.removeIf(block -> cut != null && sheeted.aspect().farness(block.box()) >= cut);
        blocks.sort(Comparator.comparingInt(block -> sheeted.aspect().farness(block.box())));
    }

    public Sheeted sheeted() {
        return sheeted;
    }

    /** The drawing, in layers. */
    public List<Shape> shapes() {
        return shapes(true);
    }

    /** @param withZones whether clear zones lie on the floor of a view from above */
    public List<Shape> shapes(boolean withZones) {
        ShellCut shell = new ShellCut(scene.body(), sheeted);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Group("body", shell.shapes()));
        if (sheeted.aspect() == Aspect.ABOVE) {
            shapes.add(new Group("rails", rails()));
            if (withZones) {
                shapes.add(new Group("clear zones", zones()));
            }
        }
        List<Shape> units = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            add(blocks.get(i), i, units);
        }
        shapes.add(new Group("units", units));
        if (sheeted.aspect() != Aspect.ABOVE && cut == null) {
            shapes.add(new Group("before the cut", nearOpenings()));
        }
        return shapes;
    }

    /** Whether a rectangle of the sheet lies wholly on what is seen of a unit. */
    public boolean shows(Bounds bounds, String unit) {
        for (int i = blocks.size() - 1; i >= 0; i--) {
            Bounds block = sheeted.bounds(blocks.get(i).box());
            if (blocks.get(i).owner().equals(unit) && block.contains(bounds)) {
                return true;
            }
            if (block.overlaps(bounds)) {
                return false;
            }
        }
        return false;
    }

    /** Whether a rectangle of the sheet lies on any block. */
    public boolean onBlock(Bounds bounds) {
        return blocks.stream().anyMatch(block -> sheeted.bounds(block.box()).overlaps(bounds));
    }

    /** What is seen or would be seen of a unit, the nearest part first. */
    public List<Bounds> parts(String unit) {
        List<Bounds> parts = new ArrayList<>();
        for (int i = blocks.size() - 1; i >= 0; i--) {
            if (blocks.get(i).owner().equals(unit)) {
                parts.add(sheeted.bounds(blocks.get(i).box()));
            }
        }
        return parts;
    }

    private void add(Block block, int number, List<Shape> shapes) {
        Bounds bounds = sheeted.bounds(block.box());
        boolean isCut = cut != null && sheeted.aspect().nearness(block.box()) > cut;
        Colour fill = isCut ? Role.RAISED.colour() : block.shade().top().mixed(Colour.WHITE, pale);
        shapes.add(Polygon.of(bounds, fill, null));
        if (isCut) {
            shapes.add(Hatch.of(bounds, number % 2 == 0 ? 45 : -45, CUT_PITCH * 1.5, Weights.CUT_HATCH));
        } else {
            block.traces().stream()
                    .filter(trace -> seen(block, trace))
                    .forEach(trace -> shapes.add(new Lines(
                            List.of(trace.points().stream().map(sheeted::spot).toList()), Weights.DETAIL)));
        }
        shapes.add(Polygon.of(bounds, null, isCut ? Weights.CUT : Weights.VISIBLE));
    }

    private boolean seen(Block block, Trace trace) {
        Face near = sheeted.aspect().near();
        int at = near.sign() > 0 ? block.box().high(near.axis()) : block.box().low(near.axis());
        return trace.points().stream().allMatch(point -> point.along(near.axis()) == at);
    }

    /** Rails as lines; a grid of many rows as its outline. */
    private List<Shape> rails() {
        List<Shape> shapes = new ArrayList<>();
        Pen pen = Weights.DETAIL.with(LineType.LONG_DASH_DOT);
        for (HoleGrid grid : scene.body().grids()) {
            if (grid.surface() == Face.BOTTOM && grid.rows() > MOST_RAILS) {
                shapes.add(Polygon.of(sheeted.bounds(grid.outline()), null, pen));
            } else if (grid.surface() == Face.BOTTOM) {
                for (int row = 0; row < grid.rows(); row++) {
                    shapes.add(Lines.of(
                            pen, sheeted.spot(grid.hole(0, row)), sheeted.spot(grid.hole(grid.count() - 1, row))));
                }
            }
        }
        return shapes;
    }

    private List<Shape> zones() {
        List<Shape> shapes = new ArrayList<>();
        for (PlacedUnit unit : scene.units()) {
            if (!shown.test(unit.id())) {
                continue;
            }
            for (PlacedZone zone : unit.zones(situation)) {
                Bounds bounds = sheeted.bounds(zone.box());
                if (zone.purpose() != Purpose.SWING) {
                    shapes.add(Hatch.of(
                            bounds,
                            ZoneLook.angle(zone.purpose()),
                            ZoneLook.pitch(zone.purpose()) * 1.4 / sheeted.scale(),
                            Weights.ZONE_DETAIL));
                }
                if (!hung(unit, zone)) {
                    shapes.add(Polygon.of(bounds, null, Weights.ZONE_LINE));
                }
            }
            for (MovablePart part :
                    situation == Situation.ON_STATION ? unit.item().movableParts() : List.<MovablePart>of()) {
                DoorSwing.of(unit, part).ifPresent(leaf -> leaf(leaf, shapes));
            }
        }
        return shapes;
    }

    /** Whether a zone is the sweep of a leaf that is drawn as a quarter circle. */
    private static boolean hung(PlacedUnit unit, PlacedZone zone) {
        return zone.purpose() == Purpose.SWING
                && unit.item().movableParts().stream()
                        .anyMatch(part -> part.name().equals(zone.name())
                                && DoorSwing.of(unit, part).isPresent());
    }

    private void leaf(DoorSwing leaf, List<Shape> shapes) {
        List<Spot> line = new ArrayList<>(leaf.arc().stream().map(sheeted::spot).toList());
        line.add(sheeted.spot(leaf.hinge()));
        shapes.add(new Lines(List.of(line), Weights.ZONE_LINE));
    }

    /** Openings of the wall that is cut away, as parts before the cutting plane. */
    private List<Shape> nearOpenings() {
        List<Shape> shapes = new ArrayList<>();
        for (Opening opening : scene.body().openings()) {
            if (opening.wall() == sheeted.aspect().near()) {
                shapes.add(Polygon.of(sheeted.bounds(opening.area()), null, Weights.ZONE_LINE));
            }
        }
        return shapes;
    }
}
