package org.shelterwright.solver.fit.model;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.places.AnchorSet;

/**
 * One way to mount the unit of a slot: a surface, a turn, and the anchors that these leave. On or under a unit, the
 * anchors are relative to the low corner of the host, one set for each turn of the host.
 */
public final class Option {
    private final Surface surface;
    private final QuarterTurn turn;
    private final Size size;
    private final Shape station;
    private final Shape road;
    private final boolean steady;
    private final boolean workPlace;
    private final boolean exitZone;
    private final boolean swing;
    private final AnchorSet[] anchors;
    private final @Nullable Berth berth;
    private final int[] holes;
    private final int[] holeReach;
    private final Point centre;
    private final boolean seat;
    private final int[] drawers;
    private final int[] controls;

    /**
     * A place that a host offers.
     *
     * @param slot slot of the host
     * @param number number of the support or stowage among those of the host
     * @param ratingKg what it bears; {@code null} if not known
     */
    public record Berth(int slot, int number, @Nullable Double ratingKg) {}

    Option(
            Surface surface,
            QuarterTurn turn,
            Size size,
            Shape station,
            Shape road,
            AnchorSet[] anchors,
            @Nullable Berth berth,
            int[] holes,
            Point centre,
            boolean seat,
            int[] drawers,
            int[] controls) {
        this.surface = surface;
        this.turn = turn;
        this.size = size;
        this.station = station;
        this.road = road;
        this.steady = station.sameParts(road);
        this.workPlace = Arrays.asList(station.purposes()).contains(Purpose.SEAT);
        this.exitZone = Arrays.asList(station.purposes()).contains(Purpose.EXIT);
        this.swing = Arrays.asList(station.purposes()).contains(Purpose.SWING);
        this.anchors = anchors;
        this.berth = berth;
        this.holes = holes;
        this.holeReach = reach(holes);
        this.centre = centre;
        this.seat = seat;
        this.drawers = drawers;
        this.controls = controls;
    }

    public Surface surface() {
        return surface;
    }

    public QuarterTurn turn() {
        return turn;
    }

    /** Turned size. */
    public Size size() {
        return size;
    }

    public Shape shape(Situation situation) {
        return situation == Situation.ON_STATION ? station : road;
    }

    public Shape station() {
        return station;
    }

    public Shape road() {
        return road;
    }

    /** Sweeps of what stays out when opened, flat (six ints each). */
    public int[] drawers() {
        return drawers;
    }

    /** Heights above its bottom of the ports that a person comes to (µm). */
    public int[] controls() {
        return controls;
    }

    /** Whether it is a seat. */
    public boolean seat() {
        return seat;
    }

    /** Whether people sit and work at it. */
    public boolean workPlace() {
        return workPlace;
    }

    /** Whether people go out by it on station. */
    boolean exitZone() {
        return exitZone;
    }

    /** Whether something of it swings or slides out on station. */
    boolean swing() {
        return swing;
    }

    /** Whether it fills and keeps free the same on station and on the road. */
    public boolean steady() {
        return steady;
    }

    /** Where the low corner may be: in the frame of the body, or relative to the host standing at the given turn. */
    public AnchorSet anchors(QuarterTurn hostTurn) {
        return anchors[berth == null ? 0 : hostTurn.ordinal()];
    }

    /** The place at its host; {@code null} on floor, wall and roof. */
    public @Nullable Berth berth() {
        return berth;
    }

    /** Where its fixings meet surfaces, relative to the low corner (three ints each). */
    int[] holes() {
        return holes;
    }

    /** Low and high ends of where its fixings meet surfaces; if it has none, the low ones are above the high ones. */
    int[] holeReach() {
        return holeReach;
    }

    private static int[] reach(int[] points) {
        // Half of the range, so that a shift added to it stays within it.
        int far = Integer.MAX_VALUE / 2;
        int[] reach = {far, far, far, -far, -far, -far};
        for (int i = 0; i < points.length; i++) {
            int axis = i % 3;
            reach[axis] = Math.min(reach[axis], points[i]);
            reach[3 + axis] = Math.max(reach[3 + axis], points[i]);
        }
        return reach;
    }

    /** Centre of mass, relative to the low corner; the middle of the size if it is not known. */
    public Point centre() {
        return centre;
    }
}
