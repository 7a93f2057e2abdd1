package org.shelterwright.app.desk.item;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.app.desk.hand.LengthText;
import org.shelterwright.app.desk.hand.LengthUnit;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Shifting;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Axis;

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
        return shifting()
                .of(item)
                .solids(item.solids())
                .zones(item.zones())
                .fixings(item.fixings())
                .tanks(item.tanks().stream()
                        .map(tank ->
                                new Tank(tank.name(), shifting().point(tank.centre()), tank.leastKg(), tank.fullKg()))
                        .toList())
                .build();
    }

    private Shifting shifting() {
        return new Shifting(axis, value -> value >= old ? value + now - old : value);
    }

    /** A typed place; as it is if it is none. */
    private String typed(String place) {
        try {
            return Line.corner(shifting().point(new Typed().point(place)));
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
