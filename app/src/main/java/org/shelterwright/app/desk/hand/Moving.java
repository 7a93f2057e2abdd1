package org.shelterwright.app.desk.hand;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.edit.PutUnits;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Units that move together.
 *
 * @param scene as it was before
 * @param leader the unit that catches
 * @param units those that are moved, the leader first, without those that ride on others of them
 * @param all those that move, riders too
 */
public record Moving(Scene scene, Situation situation, PlacedUnit leader, List<PlacedUnit> units, BitSet all) {
    /** The placed ones of some units; the one that the ray meets first leads, else the first of them. */
    static Optional<Moving> of(Scene scene, Set<String> ids, Situation situation, Ray ray) {
        return of(scene, ids, situation, Comparator.comparingDouble(unit -> way(unit, situation, ray)));
    }

    /** The placed ones of some units, the first of them leading. */
    public static Optional<Moving> of(Scene scene, Set<String> ids, Situation situation) {
        return of(scene, ids, situation, Comparator.comparingInt(PlacedUnit::index));
    }

    private static Optional<Moving> of(
            Scene scene, Set<String> ids, Situation situation, Comparator<PlacedUnit> order) {
        List<PlacedUnit> placed =
                ids.stream().flatMap(id -> scene.unit(id).stream()).toList();
        List<PlacedUnit> free = placed.stream()
                .filter(unit -> placed.stream().noneMatch(other -> rides(scene, unit, other)))
                .sorted(order)
                .toList();
        if (free.isEmpty()) {
            return Optional.empty();
        }
        BitSet all = new BitSet();
        free.forEach(unit -> all.set(unit.index()));
        return Optional.of(new Moving(scene, situation, free.get(0), free, scene.guestsOf(all)));
    }

    /** The change that shifts all of them (µm). */
    public PutUnits by(String order, Point shift) {
        return put(order, unit -> {
            Place place = unit.place(situation);
            return place.with(place.pose().moved(shift));
        });
    }

    /** The change that puts each of them at another place. */
    public PutUnits put(String order, Function<PlacedUnit, Place> places) {
        return new PutUnits(
                name(order),
                units.stream()
                        .map(unit -> unit.placement().with(changed(unit, situation), places.apply(unit)))
                        .toList());
    }

    /** The situation in which moving a unit changes its place: what is bolted down stands on the road as on station. */
    public static Situation changed(PlacedUnit unit, Situation shown) {
        boolean stays =
                unit.placement().road() == null && !unit.item().mounting().loose();
        return stays ? Situation.ON_STATION : shown;
    }

    /** Such as "Drag Rack 2" or "Drag 3 units". */
    public String name(String order) {
        return order + " " + (units.size() == 1 ? leader.name() : units.size() + " units");
    }

    private static boolean rides(Scene scene, PlacedUnit unit, PlacedUnit other) {
        if (unit == other) {
            return false;
        }
        BitSet host = new BitSet();
        host.set(other.index());
        return scene.guestsOf(host).get(unit.index());
    }

    private static double way(PlacedUnit unit, Situation situation, Ray ray) {
        return ray.into(unit.outline(situation))
                .map(at -> at.distance(ray.origin()))
                .orElse(Double.MAX_VALUE);
    }
}
