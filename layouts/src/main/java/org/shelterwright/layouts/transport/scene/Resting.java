package org.shelterwright.layouts.transport.scene;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.space.Box;

/** What pieces of a car rest on, and what rests on them. */
public final class Resting {
    private Resting() {}

    /** The pieces whose tops bear a piece, with the area of its underside on each (µm²); none of one on the deck. */
    public static Map<PlacedPiece, Double> on(PlacedPiece piece, PlacedLoad load) {
        Map<PlacedPiece, Double> areas = new LinkedHashMap<>();
        Box box = piece.box();
        if (box.z0() == 0) {
            return areas;
        }
        for (PlacedPiece other : load.pieces()) {
            Box below = other.box();
            if (other != piece && below.z1() == box.z0()) {
                double along = Math.min(box.x1(), below.x1()) - (double) Math.max(box.x0(), below.x0());
                double across = Math.min(box.y1(), below.y1()) - (double) Math.max(box.y0(), below.y0());
                if (along > 0 && across > 0) {
                    areas.put(other, along * across);
                }
            }
        }
        return areas;
    }

    /**
     * The mass that rests on each piece: that of what stands on it, with what stands on that, shared among those below by the area of
     * contact (kg). What hangs over bears nothing, so those below bear all of it.
     *
     * @return by the id of what bears; those that bear nothing are left out
     */
    public static Map<String, Double> massesKg(PlacedLoad load) {
        Map<String, Double> kg = new HashMap<>();
        List<PlacedPiece> topDown = load.pieces().stream()
                .sorted(Comparator.comparingInt(
                                (PlacedPiece piece) -> piece.box().z0())
                        .reversed())
                .toList();
        for (PlacedPiece top : topDown) {
            double own = top.shape().mostKg() + kg.getOrDefault(top.id(), 0.0);
            Map<PlacedPiece, Double> rests = on(top, load);
            double area = rests.values().stream().mapToDouble(one -> one).sum();
            rests.forEach((below, part) -> kg.merge(below.id(), own * part / area, Double::sum));
        }
        return kg;
    }
}
