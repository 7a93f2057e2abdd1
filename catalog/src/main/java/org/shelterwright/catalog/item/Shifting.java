package org.shelterwright.catalog.item;

import java.util.function.IntUnaryOperator;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;

/**
 * Moves what lies in an item along one axis, such as when it comes deeper.
 *
 * @param at where a coordinate along the axis comes to lie (µm)
 */
public record Shifting(Axis axis, IntUnaryOperator at) {

    public Point point(Point old) {
        return old.with(axis, at.applyAsInt(old.along(axis)));
    }

    /** A copy with all parts at their new places; size, mass, centres of tanks and interior are those of the item. */
    public ItemBuilder of(Item item) {
        return item.but()
                .solids(item.solids().stream().map(this::solid).toList())
                .zones(item.zones().stream().map(this::zone).toList())
                .movableParts(item.movableParts().stream().map(this::movable).toList())
                .fixings(item.fixings().stream().map(this::fixing).toList())
                .patches(item.patches().stream().map(this::patch).toList())
                .supports(item.supports().stream().map(this::support).toList())
                .ports(item.ports().stream().map(this::port).toList())
                .stowages(item.stowages().stream().map(this::stowage).toList());
    }

    private Box box(Box old) {
        return Box.between(point(old.low()), point(old.high()));
    }

    private Rect rect(Rect old) {
        return Rect.of(box(old.at(0, 0)));
    }

    private Solid solid(Solid old) {
        return new Solid(old.name(), box(old.box()), old.presence());
    }

    private ClearZone zone(ClearZone old) {
        return new ClearZone(old.name(), old.purpose(), box(old.box()), old.presence());
    }

    private MovablePart movable(MovablePart old) {
        return new MovablePart(old.name(), old.kind(), box(old.sweep()), old.securedBy(), old.hinge());
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

    private ContactPatch patch(ContactPatch old) {
        return new ContactPatch(old.name(), rect(old.area()));
    }

    private Support support(Support old) {
        int height = axis == Axis.Z ? at.applyAsInt(old.height()) : old.height();
        return new Support(
                old.name(), rect(old.area()), height, old.under(), old.ratingKg(), old.pullOutN(), old.shearN());
    }

    private Port port(Port old) {
        return new Port(old.name(), point(old.at()), old.face(), old.cableClass(), old.connector());
    }

    private Stowage stowage(Stowage old) {
        return new Stowage(
                old.name(),
                box(old.inside()),
                old.ratingKg(),
                old.kind(),
                old.opening(),
                old.lock(),
                old.leastC(),
                old.mostC());
    }
}
