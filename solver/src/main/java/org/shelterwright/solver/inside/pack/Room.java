package org.shelterwright.solver.inside.pack;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.solver.fit.kernel.Dice;

/** A stowage place that is being filled. */
final class Room {
    private final PlacedUnit unit;
    private final Stowage stowage;
    private final Repacking repacking;
    private final List<Packed> kept = new ArrayList<>();
    /** What found no room since all was packed anew; what is larger finds none either. */
    private final List<Parcel> refused = new ArrayList<>();

    private PlacePacker packer;
    private double leftKg;
    private double leftM3;

    Room(PlacedUnit unit, Stowage stowage, double restShare) {
        this.unit = unit;
        this.stowage = stowage;
        this.repacking = new Repacking(stowage.inside(), stowage.way(), restShare);
        this.packer = new PlacePacker(
                stowage.inside(), PlacePacker.gripAxes(stowage.way()).get(0), restShare);
        this.leftKg = stowage.ratingKg();
        this.leftM3 = stowage.inside().volumeM3();
    }

    PlacedUnit unit() {
        return unit;
    }

    Stowage stowage() {
        return stowage;
    }

    List<Packed> packed() {
        return packer.packed();
    }

    void keep(Packed one, double kg) {
        kept.add(one);
        packer.keep(one);
        leftKg -= kg;
        leftM3 -= one.box().volumeM3();
    }

    boolean mayHold(Parcel parcel, double kg) {
        return kg <= leftKg && parcel.volume() <= leftM3;
    }

    /** Adds a parcel beside those that are there; gives whether it found room. */
    boolean add(Parcel parcel, double kg) {
        if (refused.stream().anyMatch(other -> parcel.atLeast(other))) {
            return false;
        }
        if (!packer.add(parcel)) {
            refused.add(parcel);
            return false;
        }
        count(parcel, kg);
        return true;
    }

    /** Packs everything anew with a parcel more; leaves all as it was if that does not fit. */
    boolean addAnew(Parcel parcel, double kg, Dice dice, int tries) {
        List<Parcel> all = new ArrayList<>();
        packer.packed().stream().filter(one -> !kept.contains(one)).forEach(one -> all.add(one.parcel()));
        all.add(parcel);
        PlacePacker anew = repacking.pack(kept, all, dice, tries);
        if (anew.packed().size() < kept.size() + all.size()) {
            return false;
        }
        packer = anew;
        refused.clear();
        count(parcel, kg);
        return true;
    }

    private void count(Parcel parcel, double kg) {
        leftKg -= kg;
        leftM3 -= parcel.volume();
    }
}
