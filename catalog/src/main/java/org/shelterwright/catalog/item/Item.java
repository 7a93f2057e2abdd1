package org.shelterwright.catalog.item;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;

/**
 * One kind of equipment. Its frame has the origin at the rear right bottom corner of its size; its front looks forward
 * (along x) and its back (rear face) goes to a wall when it is mounted on one.
 *
 * @param id unique in a catalog, such as "rack-19-40u"
 * @param size the least cuboid that holds all its solids
 * @param solids what it fills; empty: the whole size
 * @param turns allowed turns; empty: all four
 * @param patches contact patches; empty: the whole bottom of each solid that reaches down
 * @param stackingKg mass that may stand on its top when stacked (kg); {@code null} if nothing may
 * @param power what it takes; {@code null} if it takes none, or, if it has a port for power, if it is not known
 * @param plant what it provides; {@code null} if nothing
 * @param interior what it is without its content; {@code null} if nothing is known of its inside
 * @param bringing how it may be brought in where it does not come upright and whole; {@code null}: only so
 * @param note one sentence for people; {@code null} if there is none
 */
public record Item(
        String id,
        String name,
        ItemKind kind,
        Material material,
        Size size,
        List<Solid> solids,
        List<ClearZone> zones,
        List<MovablePart> movableParts,
        List<Fixing> fixings,
        Mounting mounting,
        Set<QuarterTurn> turns,
        MassData mass,
        List<ContactPatch> patches,
        List<Support> supports,
        @Nullable Double stackingKg,
        List<Port> ports,
        @Nullable Power power,
        @Nullable Plant plant,
        List<Stowage> stowages,
        List<Tank> tanks,
        @Nullable Interior interior,
        @Nullable Bringing bringing,
        @Nullable String note) {
    public Item {
        solids = solids.isEmpty() ? List.of(new Solid("body", size.box(), Presence.ALWAYS)) : List.copyOf(solids);
        zones = List.copyOf(zones);
        movableParts = List.copyOf(movableParts);
        fixings = List.copyOf(fixings);
        turns = turns.isEmpty() ? Set.of(QuarterTurn.values()) : Set.copyOf(turns);
        patches = List.copyOf(patches);
        supports = List.copyOf(supports);
        ports = List.copyOf(ports);
        stowages = List.copyOf(stowages);
        tanks = List.copyOf(tanks);
        requireWithin(id, size, solids);
        if (bringing != null) {
            bringing.requireFor(id, solids);
        }
    }

    /** Begins an item with what each must have; all other parts are none or not known until they are given. */
    public static ItemBuilder named(
            String id, String name, ItemKind kind, Material material, Size size, Mounting mounting, MassData mass) {
        return new ItemBuilder(id, name, kind, material, size, mounting, mass);
    }

    /** Begins a copy of which some parts differ. */
    public ItemBuilder but() {
        return new ItemBuilder(this);
    }

    /** The same with another mass, such as that with all that is in it. */
    public Item withMass(MassData other) {
        return but().mass(other).build();
    }

    /** The same under another id, such as one that comes otherwise for one unit alone. */
    public Item withId(String other) {
        return but().id(other).build();
    }

    /** Room for rack-mounted pieces. */
    public List<RackBay> bays() {
        return interior == null ? List.of() : interior.bays();
    }

    public Optional<RackBay> bay(String bay) {
        return bays().stream().filter(one -> one.name().equals(bay)).findFirst();
    }

    public Optional<Stowage> stowage(String place) {
        return stowages.stream().filter(one -> one.name().equals(place)).findFirst();
    }

    /** The cuboids that this item fills in a situation, in its own frame. */
    public List<Box> solids(Situation situation) {
        return solids.stream()
                .filter(solid -> solid.presence().in(situation))
                .map(Solid::box)
                .toList();
    }

    /** The prints through which it stands: its patches, or else the bottom of each solid that reaches down. */
    public List<Rect> prints() {
        if (!patches.isEmpty()) {
            return patches.stream().map(ContactPatch::area).toList();
        }
        return solids.stream()
                .map(Solid::box)
                .filter(box -> box.z0() == 0)
                .map(box -> Rect.of(box.face(Face.BOTTOM)))
                .toList();
    }

    private static void requireWithin(String id, Size size, List<Solid> solids) {
        for (Solid solid : solids) {
            if (!size.box().contains(solid.box())) {
                throw new IllegalArgumentException(
                        "The solid \"" + solid.name() + "\" of item " + id + " reaches beyond the size of the item.");
            }
        }
    }
}
