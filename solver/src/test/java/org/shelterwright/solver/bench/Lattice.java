package org.shelterwright.solver.bench;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;
import org.shelterwright.solver.fit.places.AnchorSet;

/**
 * The candidate spots of one slot, numbered: every anchor of the search where holes decide, and a grid of 25 mm where any
 * place will do. Spots are made when asked for.
 */
public final class Lattice {
    /** Grid where any place will do (µm). */
    public static final int GRID = 25 * Lengths.MM;

    private final Slot slot;
    private final List<Part> parts = new ArrayList<>();
    private long size;

    /** The candidates of one option: its single anchors, or the grid in one of its areas. */
    private record Part(int option, AnchorSet anchors, int[] first, int[] count, long from, boolean points) {}

    /**
     * Numbers the candidates of a slot.
     *
     * @throws IllegalArgumentException if it may be mounted on another unit, which the ways to compare with cannot do
     */
    public Lattice(Slot slot) {
        this.slot = slot;
        for (int o = 0; o < slot.options().size(); o++) {
            Option option = slot.options().get(o);
            if (option.berth() != null) {
                throw new IllegalArgumentException("Unit " + slot.unit().id() + " may be mounted on another unit.");
            }
            AnchorSet anchors = option.anchors(QuarterTurn.R0);
            if (anchors.points() > 0) {
                add(new Part(o, anchors, new int[3], new int[] {anchors.points(), 1, 1}, size, true));
            }
            for (Box area : anchors.areas()) {
                int[] first = new int[3];
                int[] count = new int[3];
                for (Axis axis : Axis.values()) {
                    int low = area.low(axis);
                    first[axis.ordinal()] = area.extent(axis) == 0 ? low : -Math.floorDiv(-low, GRID) * GRID;
                    count[axis.ordinal()] =
                            Math.max(0, Math.floorDiv(area.high(axis) - first[axis.ordinal()], GRID) + 1);
                }
                add(new Part(o, anchors, first, count, size, false));
            }
        }
    }

    private void add(Part part) {
        parts.add(part);
        size += (long) part.count()[0] * part.count()[1] * part.count()[2];
    }

    public Slot slot() {
        return slot;
    }

    public long size() {
        return size;
    }

    /** The spot of a number from 0 to {@link #size()} - 1. */
    public Spot spot(long index) {
        int p = parts.size() - 1;
        while (parts.get(p).from() > index) {
            p--;
        }
        Part part = parts.get(p);
        long left = index - part.from();
        int[] at = new int[3];
        if (part.points()) {
            part.anchors().point((int) left, at);
        } else {
            for (int a = 0; a < 3; a++) {
                at[a] = part.first()[a] + (int) (left % part.count()[a]) * GRID;
                left /= part.count()[a];
            }
        }
        return new Spot(part.option(), at[0], at[1], at[2]);
    }

    /** Whether the slot may be at a spot, on the lattice or in an area. */
    public boolean contains(Spot spot) {
        return spot.option() < slot.options().size()
                && slot.options().get(spot.option()).anchors(QuarterTurn.R0).contains(new int[] {
                    spot.x(), spot.y(), spot.z()
                });
    }
}
