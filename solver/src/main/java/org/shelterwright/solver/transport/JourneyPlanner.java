package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * Plans a journey: puts each piece that has no place on a leg on one of the leg's cars, finds positions on each deck, packs crates
 * between walls, and proposes blocks and lashings for what has none. What is pinned stays; what a person lashed stays. The same request
 * gives the same journey. Cost: for each car the orders of what stands on it (up to 120), and a few checks of lashings a piece.
 */
public final class JourneyPlanner {
    private final JourneyChecker checker;
    private final CratePacker packer;

    public JourneyPlanner(JourneyChecker checker, CratePacker packer) {
        this.checker = checker;
        this.packer = packer;
    }

    /**
     * Plans and checks.
     *
     * @throws IllegalArgumentException if the journey names what there is not
     */
    public PlanResult plan(PlanRequest request) {
        Journey journey = new Assignment(checker.scene(request.journey(), request.parts())).assigned();
        JourneyScene scene = checker.scene(journey, request.parts());
        scene = scene.with(positions(scene, request.seed()));
        scene = scene.with(held(scene));
        JourneyScene planned = checker.scene(scene.journey(), request.parts());
        return new PlanResult(planned, checker.check(planned));
    }

    /** Positions on each car; what finds no place between walls goes on to the next car of its kind on the same legs. */
    private Journey positions(JourneyScene start, long seed) {
        JourneyScene scene = start;
        for (Load one : start.journey().loads()) {
            List<LegScene> legs = legsOf(scene, one.id());
            PlacedLoad placed = scene.load(one.id()).orElse(null);
            if (legs.isEmpty() || placed == null || placed.pieces().isEmpty()) {
                continue;
            }
            DeckPlan.Planned planned = new DeckPlan(legs, placed, packer, seed).planned();
            Journey journey = scene.journey().with(planned.load());
            if (!planned.left().isEmpty()) {
                Load next = next(scene, placed);
                journey = journey.with(
                        next == null
                                ? DeckPlan.crowded(planned.load(), planned.left(), placed)
                                : next.withStands(joined(next.stands(), planned.left())));
            }
            scene = scene.with(journey);
        }
        return scene.journey();
    }

    private static List<Stand> joined(List<Stand> stands, List<Stand> more) {
        List<Stand> all = new ArrayList<>(stands);
        all.addAll(more);
        return all;
    }

    /** The next load on a car of the same kind that goes on the same legs. */
    private static @Nullable Load next(JourneyScene scene, PlacedLoad placed) {
        List<Load> loads = scene.journey().loads();
        List<LegScene> legs = legsOf(scene, placed.id());
        for (int i = loads.indexOf(placed.load()) + 1; i < loads.size(); i++) {
            Load load = loads.get(i);
            boolean kind = scene.load(load.id())
                    .map(other -> other.car().kind() == placed.car().kind())
                    .orElse(false);
            if (kind && legsOf(scene, load.id()).equals(legs)) {
                return load;
            }
        }
        return null;
    }

    /**
     * A load with what is proposed to hold it, on all legs that it goes on; what has a lashing or a block already is left as it is.
     *
     * @throws IllegalArgumentException if there is no such load, or it goes on no leg
     */
    public static Load held(JourneyScene scene, String load) {
        PlacedLoad placed = scene.load(load)
                .orElseThrow(() -> new IllegalArgumentException("There is no load \"" + load + "\" in this journey."));
        List<LegScene> legs = legsOf(scene, load);
        if (legs.isEmpty()) {
            throw new IllegalArgumentException(
                    placed.name() + " goes on no leg, so nothing tells how it must be held.");
        }
        return new HoldPlan(legs, placed).planned();
    }

    /** Each load with what holds it, under all legs that it goes on. */
    private static Journey held(JourneyScene scene) {
        Journey journey = scene.journey();
        for (Load load : journey.loads()) {
            List<LegScene> legs = legsOf(scene, load.id());
            PlacedLoad placed = scene.load(load.id()).orElse(null);
            if (!legs.isEmpty() && placed != null) {
                journey = journey.with(new HoldPlan(legs, placed).planned());
            }
        }
        return journey;
    }

    private static List<LegScene> legsOf(JourneyScene scene, String load) {
        return scene.legs().stream()
                .filter(leg -> leg.loads().stream().anyMatch(one -> one.id().equals(load)))
                .toList();
    }
}
