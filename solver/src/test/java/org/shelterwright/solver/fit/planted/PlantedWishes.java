package org.shelterwright.solver.fit.planted;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wish;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/** Wishes for planted fits: nearness, direction of fronts, and units at the rear wall. */
final class PlantedWishes {
    private static final int NEAR = 300 * Lengths.MM;
    private static final int EVERY = 4;

    private final Layout solution;

    private PlantedWishes(Layout solution) {
        this.solution = solution;
    }

    /** Every fourth unit shall face as it does, and shall be near another that is near it. */
    static List<Wish> of(Layout solution) {
        PlantedWishes planted = new PlantedWishes(solution);
        List<Wish> wishes = new ArrayList<>();
        List<String> units = solution.brief().units().stream().map(UnitSpec::id).toList();
        for (int i = 0; i < units.size(); i++) {
            String unit = units.get(i);
            if (planted.atRearWall(unit)) {
                wishes.add(new Wish(Wish.Kind.ALONG_WALL, List.of(unit), null, Face.REAR));
            } else if (i % EVERY == 0) {
                wishes.add(planted.facing(unit));
            } else if (i % EVERY == 1) {
                units.subList(i + 1, units.size()).stream()
                        .filter(other -> planted.near(unit, other))
                        .findFirst()
                        .ifPresent(other -> wishes.add(new Wish(Wish.Kind.NEAR, List.of(unit, other), NEAR, null)));
            }
        }
        return wishes;
    }

    /** Every third unit shall be near another, every fourth face a side, whichever comes. */
    static List<Wish> atOdds(Layout solution, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Wish> wishes = new ArrayList<>();
        List<String> units = solution.brief().units().stream().map(UnitSpec::id).toList();
        for (int i = 0; i < units.size(); i++) {
            int other = random.nextInt(units.size());
            if (i % 3 == 0 && other != i) {
                wishes.add(new Wish(Wish.Kind.NEAR, List.of(units.get(i), units.get(other)), NEAR, null));
            }
            if (i % EVERY == 0) {
                Face side = random.nextBoolean() ? Face.LEFT : Face.RIGHT;
                wishes.add(new Wish(Wish.Kind.FACING, List.of(units.get(i)), null, side));
            }
        }
        return wishes;
    }

    private boolean atRearWall(String unit) {
        return place(unit).surface() == Surface.FLOOR && outline(unit).x0() == 0;
    }

    private Wish facing(String unit) {
        Face front = place(unit).pose().apply(Face.FRONT);
        return new Wish(Wish.Kind.FACING, List.of(unit), null, front);
    }

    private boolean near(String a, String b) {
        Box one = outline(a);
        Box other = outline(b);
        long sum = 0;
        for (Axis axis : Axis.values()) {
            long gap = Math.max(0, one.gap(other, axis));
            sum += gap * gap;
        }
        return sum <= (long) NEAR * NEAR;
    }

    private Box outline(String unit) {
        var item = solution.brief().units().stream()
                .filter(spec -> spec.id().equals(unit))
                .map(solution::item)
                .findFirst()
                .orElseThrow();
        return place(unit).pose().outline(item.size());
    }

    private Place place(String unit) {
        Placement placement = solution.placements().get(unit);
        if (placement == null) {
            throw new IllegalArgumentException("The solution does not place " + unit + ".");
        }
        return placement.station();
    }
}
