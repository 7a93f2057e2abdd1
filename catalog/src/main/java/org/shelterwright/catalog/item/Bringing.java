package org.shelterwright.catalog.item;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.space.Face;

/**
 * How an item may be brought in where it does not come upright and whole.
 *
 * @param lyingOn sides that it may be laid on while it is carried, in its own frame; empty: it stays upright
 * @param partsOff what can be taken off for it, and comes in by itself after it
 */
public record Bringing(List<Face> lyingOn, List<PartOff> partsOff) {
    public Bringing {
        lyingOn = List.copyOf(lyingOn);
        partsOff = List.copyOf(partsOff);
        if (lyingOn.contains(Face.TOP) || lyingOn.contains(Face.BOTTOM)) {
            throw new IllegalArgumentException(
                    "An item is laid on its front, rear, left or right, not on top or bottom.");
        }
        Set<String> solids = new HashSet<>();
        for (PartOff part : partsOff) {
            for (String solid : part.solids()) {
                if (!solids.add(solid)) {
                    throw new IllegalArgumentException(
                            "The solid \"" + solid + "\" belongs to two parts that come off. Name it in one.");
                }
            }
        }
    }

    /** Mass of all parts that come off (kg). */
    public double partsKg() {
        return partsOff.stream().mapToDouble(PartOff::massKg).sum();
    }

    void requireFor(String id, List<Solid> solids) {
        List<String> names = solids.stream().map(Solid::name).toList();
        int off = 0;
        for (PartOff part : partsOff) {
            for (String solid : part.solids()) {
                if (!names.contains(solid)) {
                    throw new IllegalArgumentException("The part \"" + part.name() + "\" of item " + id
                            + " names the solid \"" + solid + "\", which the item does not have.");
                }
                off++;
            }
        }
        if (off == solids.size()) {
            throw new IllegalArgumentException("Nothing is left of item " + id + " once its parts are off.");
        }
    }
}
