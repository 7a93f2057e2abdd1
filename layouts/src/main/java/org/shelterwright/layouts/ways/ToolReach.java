package org.shelterwright.layouts.ways;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Whether hand and tool get to the fixings of a unit past others. A tool zone that the item states must be free of them. Where
 * none is stated, there must be free room for a forearm beside the unit, at one of its sides or over it, from which the fixing
 * is within reach: a box of tool width by tool depth, in the body, free of other units but the one that carries it.
 */
public final class ToolReach {
    private static final List<Face> SIDES = List.of(Face.FRONT, Face.REAR, Face.LEFT, Face.RIGHT, Face.TOP);

    private final Scene scene;
    private final int reach;
    private final int width;
    private final int depth;
    private final Map<Integer, List<Access>> known = new HashMap<>();

    /**
     * The room beside a unit from which one of its fixings is worked at.
     *
     * @param rooms one of them must be free; empty if none is within reach at all
     */
    public record Access(PlacedFixing fixing, List<Box> rooms) {
        public Access {
            rooms = List.copyOf(rooms);
        }
    }

    private ToolReach(Scene scene, int reach, int width, int depth) {
        this.scene = scene;
        this.reach = reach;
        this.width = width;
        this.depth = depth;
    }

    /** For a scene; empty if the rules do not set the figures. */
    public static Optional<ToolReach> of(Scene scene) {
        var reach = scene.rules().value(Figure.TOOL_REACH);
        var width = scene.rules().value(Figure.TOOL_WIDTH);
        var depth = scene.rules().value(Figure.TOOL_DEPTH);
        return reach.isEmpty() || width.isEmpty() || depth.isEmpty()
                ? Optional.empty()
                : Optional.of(new ToolReach(
                        scene,
                        (int) Math.round(1000 * reach.getAsDouble()),
                        (int) Math.round(1000 * width.getAsDouble()),
                        (int) Math.round(1000 * depth.getAsDouble())));
    }

    /** The figures that are needed. */
    public static List<Figure> figures() {
        return List.of(Figure.TOOL_REACH, Figure.TOOL_WIDTH, Figure.TOOL_DEPTH);
    }

    /** The fixings of a unit with the room for working at each. */
    public List<Access> accesses(PlacedUnit unit) {
        return known.computeIfAbsent(
                unit.index(),
                any -> PlacedFixing.of(unit, Situation.ON_STATION).stream()
                        .map(fixing -> new Access(fixing, rooms(unit, fixing)))
                        .toList());
    }

    /** Fixings that cannot be reached past the units that are not gone. */
    public List<Access> hidden(PlacedUnit unit, BitSet gone) {
        return accesses(unit).stream()
                .filter(access -> access.rooms().stream().noneMatch(room -> free(unit, room, gone)))
                .toList();
    }

    /** Units that stand in the rooms of fixings that are hidden; while all of them stay, these stay hidden. */
    public BitSet hiding(PlacedUnit unit, BitSet gone) {
        BitSet hiding = new BitSet();
        for (Access access : hidden(unit, gone)) {
            for (Box room : access.rooms()) {
                for (PlacedUnit other : scene.units()) {
                    if (counts(unit, other, gone) && stands(other, room)) {
                        hiding.set(other.index());
                    }
                }
            }
        }
        return hiding;
    }

    private boolean free(PlacedUnit unit, Box room, BitSet gone) {
        for (PlacedUnit other : scene.units()) {
            if (counts(unit, other, gone) && stands(other, room)) {
                return false;
            }
        }
        return true;
    }

    /** Others that are there; what carries a unit is reached over or under. */
    private static boolean counts(PlacedUnit unit, PlacedUnit other, BitSet gone) {
        return other != unit
                && !gone.get(other.index())
                && !other.id().equals(unit.place(Situation.ON_STATION).host());
    }

    private static boolean stands(PlacedUnit other, Box room) {
        for (Box solid : other.solids(Situation.ON_STATION)) {
            if (solid.overlaps(room)) {
                return true;
            }
        }
        return false;
    }

    private List<Box> rooms(PlacedUnit unit, PlacedFixing fixing) {
        Box stated = fixing.fixing().toolZone();
        if (stated != null) {
            Box room = unit.pose(Situation.ON_STATION).apply(stated, unit.item().size());
            return List.of(room);
        }
        Box inside = scene.body().inside().box();
        List<Box> rooms = new ArrayList<>();
        for (Face side : SIDES) {
            room(unit.outline(Situation.ON_STATION), fixing.at(), side)
                    .filter(inside::contains)
                    .ifPresent(rooms::add);
        }
        return rooms;
    }

    /**
     * Where the room begins on an axis along the side: about the fixing, but within the width of the unit where that is wide
     * enough, else from the end at which the fixing is; always in the body.
     */
    private int start(Box outline, Point at, Axis axis) {
        int start;
        if (outline.extent(axis) >= width) {
            start = Math.max(outline.low(axis), Math.min(outline.high(axis) - width, at.along(axis) - width / 2));
        } else {
            start = at.along(axis) == outline.high(axis) ? outline.high(axis) - width : outline.low(axis);
        }
        return Math.max(0, Math.min(scene.body().inside().along(axis) - width, start));
    }

    /** The room beside one side of an outline; empty if the fixing is too far from it. */
    private Optional<Box> room(Box outline, Point at, Face side) {
        Axis out = side.axis();
        int from = side.sign() > 0 ? outline.high(out) : outline.low(out);
        if (Math.abs(from - at.along(out)) > reach) {
            return Optional.empty();
        }
        Point low = at;
        Point high = at;
        for (Axis axis : Axis.values()) {
            if (axis == out) {
                low = low.with(axis, side.sign() > 0 ? from : from - depth);
                high = high.with(axis, side.sign() > 0 ? from + depth : from);
            } else {
                int start = start(outline, at, axis);
                low = low.with(axis, start);
                high = high.with(axis, start + width);
            }
        }
        return Optional.of(Box.between(low, high));
    }
}
