package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;
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
        journey = journey.withLoads(changed(scene, request.seed(), true));
        scene = scene.with(journey);
        journey = journey.withLoads(changed(scene, request.seed(), false));
        JourneyScene planned = checker.scene(journey, request.parts());
        return new PlanResult(planned, checker.check(planned));
    }

    /** Each load with positions, or with what holds it, under the strongest leg that it goes on. */
    private List<Load> changed(JourneyScene scene, long seed, boolean positions) {
        Map<String, Load> changed = new LinkedHashMap<>();
        scene.journey().loads().forEach(load -> changed.put(load.id(), load));
        for (Load load : scene.journey().loads()) {
            List<LegScene> legs = legsOf(scene, load);
            PlacedLoad placed = scene.load(load.id()).orElse(null);
            if (legs.isEmpty() || placed == null) {
                continue;
            }
            changed.put(
                    load.id(),
                    positions
                            ? new DeckPlan(legs, placed, packer, seed).planned()
                            : new HoldPlan(legs, placed).planned());
        }
        return new ArrayList<>(changed.values());
    }

    private static List<LegScene> legsOf(JourneyScene scene, Load load) {
        return scene.legs().stream()
                .filter(leg -> leg.loads().stream().anyMatch(one -> one.id().equals(load.id())))
                .toList();
    }
}
