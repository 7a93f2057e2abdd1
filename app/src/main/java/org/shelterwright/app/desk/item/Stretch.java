package org.shelterwright.app.desk.item;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.app.desk.hand.LengthText;
import org.shelterwright.app.desk.hand.LengthUnit;
import org.shelterwright.catalog.item.ContactPatch;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.item.Support;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;

/**
 * A change of one extent of an item: what lies at its far face or beyond goes with the face, all else stays.
 *
 * @param old extent as it was (µm)
 * @param now extent as it is to be (µm)
 */
record Stretch(Axis axis, int old, int now) {
    private static final Map<Figure, Axis> EXTENTS =
            Map.of(Figure.DEPTH, Axis.X, Figure.WIDTH, Axis.Y, Figure.HEIGHT, Axis.Z);

    /** The draft with a text changed; if it is an extent, and both are lengths, what lies at the far face goes along. */
    static ItemDraft typed(ItemDraft draft, Figure figure, String text) {
        ItemDraft changed = draft.with(figure, text);
        Axis axis = EXTENTS.get(figure);
        Optional<Integer> old = length(draft.text(figure));
        Optional<Integer> now = length(text);
        return axis == null || old.isEmpty() || now.isEmpty() || now.get() <= 0
                ? changed
                : new Stretch(axis, old.get(), now.get()).of(changed);
    }

    private ItemDraft of(ItemDraft draft) {
        return new ItemDraft(
                of(draft.base()),
                draft.texts(),
                draft.kind(),
                draft.material(),
                draft.basis(),
                draft.surfaces(),
                draft.loose(),
                draft.turns(),
                draft.solids().stream()
                        .map(line -> line.with(line.name(), typed(line.from()), typed(line.to())))
                        .toList(),
                draft.zones().stream()
                        .map(line -> line.with(line.name(), typed(line.from()), typed(line.to())))
                        .toList(),
                draft.fixings().stream()
                        .map(line ->
                                new Line.Bolt(line.name(), typed(line.at()), line.face(), line.thread(), line.grade()))
                        .toList());
    }

    /** Its kept parts; size, solids and the like come from the draft. */
    private Item of(Item item) {
        return item.but()
                .movableParts(item.movableParts().stream()
                        .map(part -> new MovablePart(
                                part.name(), part.kind(), box(part.sweep()), part.securedBy(), part.hinge()))
                        .toList())
                .patches(item.patches().stream()
                        .map(patch -> new ContactPatch(patch.name(), rect(patch.area())))
                        .toList())
                .supports(item.supports().stream()
                        .map(one -> new Support(
                                one.name(),
                                rect(one.area()),
                                axis == Axis.Z ? along(one.height()) : one.height(),
                                one.under(),
                                one.ratingKg(),
                                one.pullOutN(),
                                one.shearN()))
                        .toList())
                .ports(item.ports().stream()
                        .map(port -> new Port(
                                port.name(), point(port.at()), port.face(), port.cableClass(), port.connector()))
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
                        .map(tank -> new Tank(tank.name(), point(tank.centre()), tank.leastKg(), tank.fullKg()))
                        .toList())
                .build();
    }

    private int along(int value) {
        return value >= old ? value + now - old : value;
    }

    private Point point(Point point) {
        return point.with(axis, along(point.along(axis)));
    }

    private Box box(Box box) {
        return Box.between(point(box.low()), point(box.high()));
    }

    private Rect rect(Rect rect) {
        return Rect.of(box(rect.at(0, 0)));
    }

    /** A typed place; as it is if it is none. */
    private String typed(String place) {
        try {
            return Line.corner(point(new Typed().point(place)));
        } catch (IllegalArgumentException unfinished) {
            return place;
        }
    }

    private static Optional<Integer> length(String text) {
        try {
            return Optional.of(LengthText.parse(text, LengthUnit.MILLIMETRE));
        } catch (IllegalArgumentException wrong) {
            return Optional.empty();
        }
    }

    /** The figures that are extents. */
    static List<Figure> extents() {
        return List.of(Figure.DEPTH, Figure.WIDTH, Figure.HEIGHT);
    }
}
