package org.shelterwright.layouts.boltdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.restraint.Fasteners;
import org.shelterwright.layouts.ledger.restraint.HeldFixing;
import org.shelterwright.layouts.ledger.restraint.Joint;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Fixings of a unit that are alike, in the order of tightening.
 *
 * @param thread such as "M10"
 * @param grade property class; {@code null} if not stated
 * @param firstNm torque of the first round (N·m); {@code null} if not known
 * @param finalNm torque of the second round (N·m); {@code null} if not known
 * @param socketMm width across flats of the bolt head; {@code null} if not known
 * @param missing what is not known, in words; empty if all is
 */
public record Bolting(
        String thread,
        @Nullable String grade,
        @Nullable Double firstNm,
        @Nullable Double finalNm,
        @Nullable Integer socketMm,
        List<Place> places,
        String missing) {
    /**
     * Widths across flats of hexagon heads (mm).
     *
     * <p>Source: ISO 272:1982, table 1, as used by ISO 4014 and ISO 4017 (from memory).
     */
    private static final Map<String, Integer> SOCKETS =
            Map.of("M5", 8, "M6", 10, "M8", 13, "M10", 16, "M12", 18, "M16", 24, "M20", 30);

    /**
     * One fixing.
     *
     * @param number in the order of tightening, from 1, over all fixings of the unit
     * @param at in the frame of the body
     * @param taker name of what takes it, such as "floor raster"
     * @param where where in that, such as "row 3, hole 24"; empty if that is not known
     * @param grid the rail or raster that takes it; {@code null} if it is none
     */
    public record Place(
            int number,
            String name,
            Point at,
            String taker,
            String where,
            @Nullable HoleGrid grid) {
        /** Where it goes, such as "floor raster, row 3, hole 24". */
        public String into() {
            return where.isEmpty() ? taker : taker + ", " + where;
        }
    }

    public Bolting {
        places = List.copyOf(places);
    }

    /** Number, thread and grade, such as "6 × M10, grade 8.8". */
    public String text() {
        return places.size() + " × " + thread + (grade == null ? "" : ", grade " + grade);
    }

    /** The fixings of a unit, those that are alike together. */
    static List<Bolting> of(Scene scene, PlacedUnit unit) {
        List<Joint> joints = Joint.of(scene, Fasteners.builtIn(), unit);
        List<Integer> order = Tightening.crosswise(
                joints.stream().map(joint -> joint.placed().at()).toList());
        List<Bolting> groups = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            Joint joint = joints.get(order.get(i));
            Bolting one = one(scene, joint, i + 1);
            int like = like(groups, one);
            if (like < 0) {
                groups.add(one);
            } else {
                groups.set(like, groups.get(like).with(one.places().get(0)));
            }
        }
        return groups;
    }

    private static int like(List<Bolting> groups, Bolting one) {
        for (int i = 0; i < groups.size(); i++) {
            Bolting other = groups.get(i);
            if (other.thread().equals(one.thread())
                    && Objects.equals(other.grade(), one.grade())
                    && Objects.equals(other.finalNm(), one.finalNm())) {
                return i;
            }
        }
        return -1;
    }

    private Bolting with(Place place) {
        List<Place> more = new ArrayList<>(places);
        more.add(place);
        return new Bolting(thread, grade, firstNm, finalNm, socketMm, more, missing);
    }

    private static Bolting one(Scene scene, Joint joint, int number) {
        String thread = joint.placed().fixing().thread();
        Double torque = rounded(joint.torqueNm());
        var share = scene.rules().value(Figure.FIRST_STAGE);
        Double first = torque == null || share.isEmpty() ? null : rounded(torque * share.getAsDouble());
        return new Bolting(
                thread,
                joint.placed().fixing().grade(),
                first,
                torque,
                SOCKETS.get(thread),
                List.of(place(joint, number)),
                joint.missing());
    }

    /** Torques are set on a wrench: whole newton metres from 10 on, halves below, never more than calculated. */
    private static @Nullable Double rounded(@Nullable Double torque) {
        if (torque == null) {
            return null;
        }
        return torque >= 10 ? Math.floor(torque) : Math.floor(2 * torque) / 2;
    }

    private static Place place(Joint joint, int number) {
        String name = joint.placed().fixing().name();
        Point at = joint.placed().at();
        HeldFixing held = joint.held();
        if (held == null) {
            return new Place(number, name, at, "not known: " + joint.missing(), "", null);
        }
        HardPoint hardPoint = held.hardPoint();
        if (hardPoint instanceof HoleGrid grid) {
            int hole = (at.along(grid.along()) - grid.first().along(grid.along())) / grid.pitch();
            int row = (at.along(grid.across()) - grid.first().along(grid.across())) / grid.rowPitch();
            String where = (grid.rows() > 1 ? "row " + (row + 1) + ", " : "") + "hole " + (hole + 1);
            return new Place(number, name, at, grid.name(), where, grid);
        }
        Axis square = hardPoint == null
                ? joint.placed().face().axis()
                : hardPoint.surface().axis();
        String where = (hardPoint == null ? "at " : "drill at ") + measured(square, at);
        return new Place(number, name, at, held.into(), where, null);
    }

    private static String measured(Axis square, Point at) {
        List<String> parts = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            if (axis != square) {
                String from = axis == Axis.X ? "from the rear wall" : axis == Axis.Y ? "from the right wall" : "high";
                parts.add(Lengths.format(at.along(axis)) + " " + from);
            }
        }
        return Wording.list(parts);
    }
}
