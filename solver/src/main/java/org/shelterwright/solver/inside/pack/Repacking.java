package org.shelterwright.solver.inside.pack;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.solver.fit.kernel.Dice;

/**
 * Packs a set of parcels into one place from scratch: several orders, the bulkiest first, the broadest, the highest, the longest, and
 * then shuffled ones; at last by going back where one corner takes nothing. What packs all first is taken, else the order that packs
 * most volume.
 */
public final class Repacking {
    private static final List<Comparator<Parcel>> ORDERS = List.of(
            Comparator.comparingDouble((Parcel one) -> -one.volume()),
            Comparator.comparingDouble(
                    (Parcel one) -> -(double) one.size().x() * one.size().y()),
            Comparator.comparingInt((Parcel one) -> -one.size().z()),
            Comparator.comparingInt((Parcel one) -> -Math.max(
                    one.size().x(), Math.max(one.size().y(), one.size().z()))));

    /** Going by touch tries every parcel at every corner for each that goes in: of more than so many that takes too long. */
    private static final int MOST_TOUCHING = 16;

    private static final long BRANCHES_A_TRY = 200;

    private final Box inside;
    private final Face way;
    private final double restShare;

    public Repacking(Box inside, Face way, double restShare) {
        this.inside = inside;
        this.way = way;
        this.restShare = restShare;
    }

    /**
     * Packs.
     *
     * @param kept what must stay where it is
     * @param tries how many orders are tried, for each axis of fingers
     */
    public PlacePacker pack(List<Packed> kept, List<Parcel> parcels, Dice dice, int tries) {
        PlacePacker best = null;
        double most = -1;
        for (int i = 0; i < tries; i++) {
            List<Parcel> order = order(parcels, i, dice);
            for (Axis axis : PlacePacker.gripAxes(way)) {
                PlacePacker packer = new PlacePacker(inside, axis, restShare);
                kept.forEach(packer::keep);
                double volume = fill(packer, order, i, dice);
                if (volume > most + PlacePacker.SAME_M3) {
                    most = volume;
                    best = packer;
                }
                if (packer.packed().size() == kept.size() + parcels.size()) {
                    return packer;
                }
            }
        }
        for (Axis axis : PlacePacker.gripAxes(way)) {
            PlacePacker packer = new PlacePacker(inside, axis, restShare);
            kept.forEach(packer::keep);
            if (CornerSearch.all(packer, inside, parcels, BRANCHES_A_TRY * tries)) {
                return packer;
            }
        }
        return best == null ? new PlacePacker(inside, PlacePacker.gripAxes(way).get(0), restShare) : best;
    }

    /** Every other try goes by touching surface where there are few parcels, the others by the order. */
    private static double fill(PlacePacker packer, List<Parcel> order, int number, Dice dice) {
        double volume = 0;
        if (number % 2 == 1 && order.size() <= MOST_TOUCHING) {
            List<Parcel> open = new ArrayList<>(order);
            for (Parcel next = packer.addTouching(open, dice); next != null; next = packer.addTouching(open, dice)) {
                open.remove(next);
                volume += next.volume();
            }
            return volume;
        }
        for (Parcel parcel : order) {
            volume += packer.add(parcel) ? parcel.volume() : 0;
        }
        return volume;
    }

    private static List<Parcel> order(List<Parcel> parcels, int number, Dice dice) {
        List<Parcel> order = new ArrayList<>(parcels);
        if (number < ORDERS.size()) {
            order.sort(ORDERS.get(number).thenComparing(Parcel::id));
            return order;
        }
        order.sort(ORDERS.get(number % ORDERS.size()).thenComparing(Parcel::id));
        for (int swaps = 0; swaps < 1 + order.size() / 3; swaps++) {
            Collections.swap(order, dice.below(order.size()), dice.below(order.size()));
        }
        return order;
    }
}
