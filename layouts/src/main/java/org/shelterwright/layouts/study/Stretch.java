package org.shelterwright.layouts.study;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.ContactPatch;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.item.Support;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;

/**
 * An item that grows along one axis. Its far side (front, left or top) moves, and with it all that lies there or beyond: what
 * reaches the far side grows, what stands before it shifts, fixings and all else stay. The centre of mass keeps its share of the
 * size; bays for rack-mounted pieces stay as they are. This is the plainest reading of "40 mm deeper": a new catalog entry says more.
 */
final class Stretch {
    private final Item item;
    private final Axis axis;
    private final int by;
    private final int far;

    Stretch(Item item, Axis axis, int by) {
        this.item = item;
        this.axis = axis;
        this.by = by;
        this.far = item.size().along(axis);
    }

    Item stretched() {
        if (far + (long) by <= 0) {
            throw tooMuch();
        }
        try {
            return item.but()
                    .size(size(item.size()))
                    .solids(item.solids().stream()
                            .map(one -> new Solid(one.name(), box(one.box()), one.presence()))
                            .toList())
                    .zones(item.zones().stream()
                            .map(one -> new ClearZone(one.name(), one.purpose(), box(one.box()), one.presence()))
                            .toList())
                    .movableParts(item.movableParts().stream()
                            .map(one -> new MovablePart(
                                    one.name(), one.kind(), box(one.sweep()), one.securedBy(), one.hinge()))
                            .toList())
                    .fixings(item.fixings().stream().map(this::fixing).toList())
                    .mass(mass(item.mass()))
                    .patches(item.patches().stream()
                            .map(one -> new ContactPatch(one.name(), rect(one.area())))
                            .toList())
                    .supports(item.supports().stream().map(this::support).toList())
                    .ports(item.ports().stream()
                            .map(one -> new Port(
                                    one.name(), point(one.at()), one.face(), one.cableClass(), one.connector()))
                            .toList())
                    .stowages(item.stowages().stream()
                            .map(one -> new Stowage(
                                    one.name(),
                                    box(one.inside()),
                                    one.ratingKg(),
                                    one.kind(),
                                    one.opening(),
                                    one.lock(),
                                    one.leastC(),
                                    one.mostC()))
                            .toList())
                    .tanks(item.tanks().stream()
                            .map(one -> new Tank(one.name(), share(one.centre()), one.leastKg(), one.fullKg()))
                            .toList())
                    .build();
        } catch (IllegalArgumentException e) {
            throw tooMuch();
        }
    }

    /** The same item with more mass, in the same place; so without its content too. */
    static Item heavier(Item item, double byKg) {
        if (byKg == 0) {
            return item;
        }
        Interior interior = item.interior();
        MassData empty = interior == null ? null : interior.empty();
        return with(
                item,
                item.name(),
                heavier(item.id(), item.mass(), byKg),
                interior == null || empty == null
                        ? interior
                        : new Interior(heavier(item.id(), empty, byKg), interior.bays()));
    }

    private static MassData heavier(String id, MassData mass, double byKg) {
        Double massKg = mass.massKg();
        if (massKg == null) {
            return mass;
        }
        if (massKg + byKg <= 0) {
            throw new IllegalArgumentException(
                    "The item \"" + id + "\" of " + massKg + " kg cannot become " + -byKg + " kg lighter.");
        }
        return new MassData(
                massKg + byKg,
                mass.centre(),
                mass.basis(),
                mass.growthShare(),
                mass.uncertaintyKg(),
                mass.centreUncertainty());
    }

    static Item named(Item item, String name) {
        return with(item, name, item.mass(), item.interior());
    }

    private static Item with(Item old, String name, MassData mass, @Nullable Interior interior) {
        return old.but().name(name).mass(mass).interior(interior).build();
    }

    private IllegalArgumentException tooMuch() {
        return new IllegalArgumentException("The item \"" + item.id() + "\" cannot come "
                + Lengths.format(Math.abs(by)) + " mm " + (by < 0 ? "smaller" : "larger") + " along its "
                + switch (axis) {
                    case X -> "depth";
                    case Y -> "width";
                    case Z -> "height";
                }
                + " of " + Lengths.format(far) + " mm: something in it lies where it would end. Give a catalog entry"
                + " of its own.");
    }

    /** Where a coordinate along the axis comes to lie. */
    private int at(int old) {
        if (old < far && old > far + by) {
            throw tooMuch();
        }
        return old >= far ? Math.addExact(old, by) : old;
    }

    private Size size(Size old) {
        return new Size(
                axis == Axis.X ? old.x() + by : old.x(),
                axis == Axis.Y ? old.y() + by : old.y(),
                axis == Axis.Z ? old.z() + by : old.z());
    }

    private Point point(Point old) {
        return old.with(axis, at(old.along(axis)));
    }

    private Box box(Box old) {
        return Box.between(point(old.low()), point(old.high()));
    }

    private Rect rect(Rect old) {
        return Rect.of(box(old.at(0, 0)));
    }

    private Fixing fixing(Fixing old) {
        Box zone = old.toolZone();
        return new Fixing(
                old.name(),
                point(old.at()),
                old.face(),
                old.thread(),
                old.grade(),
                zone == null ? null : box(zone),
                old.slot());
    }

    private Support support(Support old) {
        int height = axis == Axis.Z ? at(old.height()) : old.height();
        Rect area = axis == Axis.Z ? old.area() : rect(old.area());
        return new Support(old.name(), area, height, old.under(), old.ratingKg(), old.pullOutN(), old.shearN());
    }

    private MassData mass(MassData old) {
        Point centre = old.centre();
        return new MassData(
                old.massKg(),
                centre == null ? null : share(centre),
                old.basis(),
                old.growthShare(),
                old.uncertaintyKg(),
                old.centreUncertainty());
    }

    private Point share(Point old) {
        return old.with(axis, (int) Math.round(old.along(axis) * (far + (double) by) / far));
    }
}
