package org.shelterwright.solver.inside.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.kernel.Dice;

/** A drawer cut into parcels without waste, so that all of them fit. */
public final class CutDrawer {
    public static final Box WHOLE = Box.ofMm(0, 0, 0, 600, 500, 250);

    private CutDrawer() {}

    /** Cuts a box into so many by planes, each time the largest. */
    private static List<Box> cut(Box whole, int count, Dice dice) {
        List<Box> boxes = new ArrayList<>(List.of(whole));
        while (boxes.size() < count) {
            boxes.sort(Comparator.comparingDouble((Box box) -> -box.volumeM3()));
            Box box = boxes.remove(0);
            Axis axis = longest(box);
            int at = box.low(axis) + (int) ((0.3 + 0.4 * dice.share()) * box.extent(axis));
            boxes.add(Box.between(box.low(), box.high().with(axis, at)));
            boxes.add(Box.between(box.low().with(axis, at), box.high()));
        }
        return boxes;
    }

    private static Axis longest(Box box) {
        Axis longest = Axis.X;
        for (Axis axis : Axis.values()) {
            longest = box.extent(axis) > box.extent(longest) ? axis : longest;
        }
        return longest;
    }

    /** The parts where they were cut. */
    static List<Box> boxes(int count, Dice dice) {
        return cut(WHOLE, count, dice);
    }

    /** The parts as parcels, none fragile or to be gripped. */
    public static List<Parcel> parcels(int count, Dice dice) {
        List<Box> boxes = cut(WHOLE, count, dice);
        List<Parcel> parcels = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            Box box = boxes.get(i);
            Size size = new Size(box.extent(Axis.X), box.extent(Axis.Y), box.extent(Axis.Z));
            parcels.add(new Parcel("p" + i, size, false, false, 0));
        }
        return parcels;
    }
}
