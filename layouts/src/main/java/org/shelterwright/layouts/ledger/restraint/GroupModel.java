package org.shelterwright.layouts.ledger.restraint;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.fit.MountFace;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.ledger.restraint.group.Bolt;
import org.shelterwright.layouts.ledger.restraint.group.BracedGroup;
import org.shelterwright.layouts.ledger.restraint.group.FlatGroup;
import org.shelterwright.layouts.ledger.restraint.group.Force;
import org.shelterwright.layouts.ledger.restraint.group.GroupForces;
import org.shelterwright.layouts.ledger.restraint.group.SpaceBolt;
import org.shelterwright.layouts.ledger.restraint.group.Spot;
import org.shelterwright.layouts.scene.PlacedUnit;

/** Brings the fixings and the footprint of a unit into the frame of the group solver, and the pushes with them. */
final class GroupModel {
    private static final double STANDARD_GRAVITY = 9.80665;

    private final StackLoad load;
    private final Face mount;
    private final Axis first;
    private final Axis second;
    private final double plane;
    private final @Nullable FlatGroup flat;
    private final @Nullable BracedGroup braced;

    GroupModel(PlacedUnit unit, List<HeldFixing> fixings, StackLoad load) {
        this.load = load;
        mount = MountFace.of(unit.place(Situation.ON_THE_ROAD));
        first = mount.axis() == Axis.X ? Axis.Y : Axis.X;
        second = mount.axis() == Axis.Z ? Axis.Y : Axis.Z;
        Box outline = unit.outline(Situation.ON_THE_ROAD);
        plane = Lengths.metres(mount.sign() > 0 ? outline.high(mount.axis()) : outline.low(mount.axis()));
        List<Point> contact = Footprint.of(unit, mount);
        boolean onePlane = !fixings.isEmpty()
                && fixings.stream().allMatch(one -> one.placed().face() == mount);
        flat = onePlane ? flat(fixings, contact) : null;
        braced = onePlane ? null : braced(fixings, contact);
    }

    private FlatGroup flat(List<HeldFixing> fixings, List<Point> contact) {
        List<Bolt> bolts = new ArrayList<>();
        for (HeldFixing fixing : fixings) {
            Point at = fixing.placed().at();
            Axis slot = fixing.placed().slot();
            bolts.add(
                    new Bolt(metres(at, first), metres(at, second), 1, slot == first ? 0 : 1, slot == second ? 0 : 1));
        }
        return new FlatGroup(
                bolts,
                contact.stream()
                        .map(at -> new Spot(metres(at, first), metres(at, second)))
                        .toList());
    }

    private BracedGroup braced(List<HeldFixing> fixings, List<Point> contact) {
        List<SpaceBolt> bolts = new ArrayList<>();
        for (HeldFixing fixing : fixings) {
            PlacedFixing placed = fixing.placed();
            bolts.add(spot(placed.at(), placed.face(), placed.slot(), placed.face() != mount));
        }
        return new BracedGroup(
                bolts, contact.stream().map(at -> spot(at, mount, null, false)).toList());
    }

    private static SpaceBolt spot(Point at, Face face, @Nullable Axis slot, boolean brace) {
        return new SpaceBolt(
                Lengths.metres(at.x()),
                Lengths.metres(at.y()),
                Lengths.metres(at.z()),
                face.axis().ordinal(),
                face.sign(),
                slot == null ? SpaceBolt.ROUND : slot.ordinal(),
                brace);
    }

    private static double metres(Point at, Axis axis) {
        return Lengths.metres(at.along(axis));
    }

    /** The corners of what touches the surface, in its plane; none of a braced group. */
    List<Spot> contact() {
        return flat == null ? List.of() : flat.contact();
    }

    Face mount() {
        return mount;
    }

    /** Place of a point in the mounting plane (m). */
    Spot inPlane(Point at) {
        return new Spot(metres(at, first), metres(at, second));
    }

    /** Place of the centre of mass in the mounting plane (m). */
    Spot centre() {
        double[] at = {load.x(), load.y(), load.z()};
        return new Spot(at[first.ordinal()], at[second.ordinal()]);
    }

    /** Distance of the centre of mass from the mounting plane (m). */
    double centreHeight() {
        double[] at = {load.x(), load.y(), load.z()};
        return (plane - at[mount.axis().ordinal()]) * mount.sign();
    }

    /** A push seen in the mounting plane, in multiples of standard gravity. */
    Spot inPlane(Push push) {
        double[] g = {push.gx(), push.gy(), push.gz()};
        return new Spot(g[first.ordinal()], g[second.ordinal()]);
    }

    /** What a push puts on each fixing. The centre lies where in its range it is worst: with the push, and away from the surface. */
    GroupForces under(Push push) {
        double weight = load.massKg() * STANDARD_GRAVITY;
        double along = Math.hypot(push.gx(), push.gy());
        double shift = along == 0 ? 0 : load.offM() / along;
        double[] force = {weight * push.gx(), weight * push.gy(), weight * push.gz()};
        double[] at = {load.x() + shift * push.gx(), load.y() + shift * push.gy(), load.z()};
        at[mount.axis().ordinal()] -= mount.sign() * load.offM();
        if (flat == null) {
            return Objects.requireNonNull(braced).under(force[0], force[1], force[2], at[0], at[1], at[2]);
        }
        int s = first.ordinal();
        int t = second.ordinal();
        int n = mount.axis().ordinal();
        double height = (plane - at[n]) * mount.sign();
        return flat.under(new Force(force[s], force[t], -mount.sign() * force[n], at[s], at[t], height));
    }
}
