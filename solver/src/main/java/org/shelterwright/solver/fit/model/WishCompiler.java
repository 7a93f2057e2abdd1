package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Wish;

/** Splits wishes into terms of one or two slots each. */
final class WishCompiler {
    private final Map<String, Integer> stationSlot;
    private final Size inside;

    WishCompiler(Map<String, Integer> stationSlot, Size inside) {
        this.stationSlot = stationSlot;
        this.inside = inside;
    }

    /**
     * Splits all wishes of a brief.
     *
     * @throws IllegalArgumentException if a wish names an unknown unit, or lacks its wall or distance
     */
    List<WishTerm> terms(List<Wish> wishes) {
        List<WishTerm> terms = new ArrayList<>();
        for (Wish wish : wishes) {
            List<Integer> slots =
                    wish.units().stream().map(unit -> slot(wish, unit)).toList();
            switch (wish.kind()) {
                case NEAR, SAME_SIDE -> {
                    for (int i = 1; i < slots.size(); i++) {
                        terms.add(term(wish, slots.get(0), slots.get(i)));
                    }
                }
                case APART -> {
                    for (int i = 0; i < slots.size(); i++) {
                        for (int j = i + 1; j < slots.size(); j++) {
                            terms.add(term(wish, slots.get(i), slots.get(j)));
                        }
                    }
                }
                case FACING, ALONG_WALL -> slots.forEach(slot -> terms.add(term(wish, slot, slot)));
                case ORDER_ALONG_WALL -> {
                    Wish along = new Wish(Wish.Kind.ALONG_WALL, wish.units(), null, wish.face());
                    slots.forEach(slot -> terms.add(term(along, slot, slot)));
                    for (int i = 1; i < slots.size(); i++) {
                        terms.add(term(wish, slots.get(i - 1), slots.get(i)));
                    }
                }
            }
        }
        return terms;
    }

    private WishTerm term(Wish wish, int a, int b) {
        boolean measured = wish.kind() == Wish.Kind.NEAR || wish.kind() == Wish.Kind.APART;
        boolean sided = switch (wish.kind()) {
            case FACING, ALONG_WALL, ORDER_ALONG_WALL -> true;
            default -> false;
        };
        Integer distance = wish.distance();
        @Nullable Face face = wish.face();
        if (measured && distance == null) {
            throw new IllegalArgumentException("The wish \"" + word(wish) + "\" for " + String.join(", ", wish.units())
                    + " needs a distance. Give it as \"distance\".");
        }
        if (sided && face == null) {
            throw new IllegalArgumentException("The wish \"" + word(wish) + "\" for " + String.join(", ", wish.units())
                    + " needs a side of the body. Give it as \"face\".");
        }
        return new WishTerm(
                wish.kind(), a, b, distance == null ? 0 : distance, face == null ? Face.FRONT : face, inside);
    }

    private int slot(Wish wish, String unit) {
        Integer slot = stationSlot.get(unit);
        if (slot == null) {
            throw new IllegalArgumentException("The wish \"" + word(wish) + "\" names a unit \"" + unit
                    + "\" that the brief does not list. Correct the id or add the unit.");
        }
        return slot;
    }

    private static String word(Wish wish) {
        return wish.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
