package org.shelterwright.solver.fit.planted;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wish;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.rules.Figure;

/**
 * A brief with a known solution. Two banks along the side walls of a body are cut into pieces, along the wall and in
 * height; each piece, shortened by the slack, is a unit: on the floor with a service zone in the aisle and bolts on a hole
 * pitch, or on the wall above. A walkway must lead from the door to every service zone. Some units on the floor have a knee space, and in about one in ten units stand in one.
 *
 * @param question the brief with nothing placed
 * @param solution the same with every unit where it was cut
 */
public record PlantedFit(Layout question, Layout solution) {
    private static final int LENGTH_A_UNIT = 180;
    private static final int LEAST_LENGTH = 1500;
    private static final Map<String, Double> LIMITS = Map.of(
            Figure.WALKWAY_WIDTH.id(), 500.0,
            Figure.WALKWAY_HEADROOM.id(), 1900.0,
            Figure.STEP_HEIGHT.id(), 50.0,
            Figure.EXIT_WIDTH.id(), 500.0);

    /**
     * Plants a fit.
     *
     * @param seed the same seed plants the same fit
     * @param units number of units, at least 4
     * @param slack share of the area of the side walls that stays free in the known solution, such as 0.1
     */
    public static PlantedFit of(long seed, int units, double slack) {
        SplittableRandom random = new SplittableRandom(seed * 1000 + units);
        int length = Math.max(LEAST_LENGTH, units * LENGTH_A_UNIT / Cuts.STEP * Cuts.STEP);
        List<Bank.Standing> standing = new ArrayList<>(Bank.plant(true, length, units / 2, slack, "right-", random));
        standing.addAll(Bank.plant(false, length, units - units / 2, slack, "left-", random));
        Collections.shuffle(standing, new Random(seed));
        Map<String, Item> items = new LinkedHashMap<>();
        Map<String, Placement> placements = new LinkedHashMap<>();
        List<UnitSpec> specs = new ArrayList<>();
        for (Bank.Standing one : standing) {
            String id = "unit-" + (specs.size() + 1);
            items.put(one.item().id(), one.item());
            specs.add(new UnitSpec(id, "Unit " + (specs.size() + 1), one.item().id(), "planted"));
            placements.put(id, Placement.of(id, one.place()));
        }
        Parts parts = new Parts(PlantedBody.of(length), null, null, items);
        return of(brief("planted-" + seed, parts, specs, List.of(), LIMITS), parts, placements);
    }

    /** The same fit with wishes, all of which the known solution keeps. */
    public PlantedFit withWishes() {
        return asking(PlantedWishes.of(solution), question.brief().limits());
    }

    /** The same fit with wishes taken by chance, many of which are at odds with each other. */
    public PlantedFit withWishesAtOdds(long seed) {
        return asking(PlantedWishes.atOdds(solution, seed), question.brief().limits());
    }

    /** The same fit without figures for walkways and exits, so that the ledger does not assess these. */
    public PlantedFit withoutWalkways() {
        return asking(question.brief().wishes(), Map.of());
    }

    /** Share of the area of the side walls that the known solution leaves free. */
    public double freeShare() {
        double walls =
                2.0 * question.body().inside().x() * question.body().inside().z();
        double covered = 0;
        for (UnitSpec unit : question.brief().units()) {
            Item item = question.item(unit);
            if (!item.id().endsWith(Bank.GUEST)) {
                covered += (double) item.size().y() * item.size().z();
            }
        }
        return 1 - covered / walls;
    }

    private PlantedFit asking(List<Wish> wishes, Map<String, Double> limits) {
        Brief before = question.brief();
        Brief brief = brief(before.id(), question.parts(), before.units(), wishes, limits);
        return of(brief, question.parts(), solution.placements());
    }

    private static PlantedFit of(Brief brief, Parts parts, Map<String, Placement> placements) {
        Layout question = Layout.empty(brief, parts);
        return new PlantedFit(question, question.withPlacements(placements));
    }

    private static Brief brief(
            String id, Parts parts, List<UnitSpec> units, List<Wish> wishes, Map<String, Double> limits) {
        String body = parts.body().id();
        return Brief.named(id, "Planted", body)
                .units(units)
                .wishes(wishes)
                .limits(limits)
                .build();
    }
}
