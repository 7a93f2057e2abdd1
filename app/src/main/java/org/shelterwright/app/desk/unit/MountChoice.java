package org.shelterwright.app.desk.unit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Remount;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.fit.MountFace;
import org.shelterwright.layouts.ledger.fit.PlacedSupport;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Something that a unit can be mounted on.
 *
 * @param words such as "the floor", "the left wall", "on Desk"
 * @param wall the wall; {@code null} if it is none
 * @param host id of the unit that carries it; {@code null} if it is none
 * @param meant whether the item may be mounted so; other choices can be made too, and the ledger then says what breaks
 */
record MountChoice(
        String words,
        Surface surface,
        @Nullable Face wall,
        @Nullable String host,
        boolean meant) {
    private static final String NOT_MEANT = " (not meant for it)";

    /** All choices in a scene, first those that the item is meant for: the surfaces of the body, then each unit with a support. */
    static List<MountChoice> all(Scene scene, PlacedUnit unit, Situation situation) {
        List<MountChoice> all = new ArrayList<>();
        Set<Surface> meant = unit.item().mounting().surfaces();
        all.add(new MountChoice("the floor", Surface.FLOOR, null, null, meant.contains(Surface.FLOOR)));
        for (Face wall : List.of(Face.LEFT, Face.RIGHT, Face.FRONT, Face.REAR)) {
            all.add(new MountChoice(Wording.surface(wall), Surface.WALL, wall, null, meant.contains(Surface.WALL)));
        }
        all.add(new MountChoice("the roof", Surface.ROOF, null, null, meant.contains(Surface.ROOF)));
        for (boolean under : new boolean[] {false, true}) {
            for (PlacedUnit host : scene.units()) {
                boolean carries = PlacedSupport.of(host, situation).stream().anyMatch(one -> one.under() == under);
                if (carries && !host.id().equals(unit.id())) {
                    all.add(on(host.name(), host.id(), under, meant));
                }
            }
        }
        MountChoice now = of(scene, unit, situation);
        if (!all.contains(now)) {
            all.add(now);
        }
        all.sort(Comparator.comparing((MountChoice choice) -> !choice.meant));
        return all;
    }

    /** What a unit is mounted on. */
    static MountChoice of(Scene scene, PlacedUnit unit, Situation situation) {
        Place place = unit.place(situation);
        Set<Surface> meant = unit.item().mounting().surfaces();
        String host = place.host();
        if (host != null) {
            String name = scene.unit(host).map(PlacedUnit::name).orElse(host);
            return on(name, host, place.surface() == Surface.UNDER_UNIT, meant);
        }
        Face face = MountFace.of(place);
        return new MountChoice(
                Wording.surface(face),
                place.surface(),
                place.surface() == Surface.WALL ? face : null,
                null,
                meant.contains(place.surface()));
    }

    /**
     * The nearest place there.
     *
     * @throws IllegalArgumentException with a sentence if there is none
     */
    Place place(Scene scene, PlacedUnit unit, Situation situation) {
        Remount remount = new Remount(scene, unit, situation);
        return switch (surface) {
            case FLOOR -> remount.onFloor();
            case WALL -> remount.onWall(wall);
            case ROOF -> remount.underRoof();
            case ON_UNIT, UNDER_UNIT ->
                remount.at(scene.unit(String.valueOf(host)).orElseThrow(), surface == Surface.UNDER_UNIT);
        };
    }

    @Override
    public String toString() {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + (meant ? "" : NOT_MEANT);
    }

    private static MountChoice on(String name, String id, boolean under, Set<Surface> meant) {
        Surface surface = under ? Surface.UNDER_UNIT : Surface.ON_UNIT;
        return new MountChoice((under ? "under " : "on ") + name, surface, null, id, meant.contains(surface));
    }
}
