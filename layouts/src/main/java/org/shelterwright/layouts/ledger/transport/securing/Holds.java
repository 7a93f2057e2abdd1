package org.shelterwright.layouts.ledger.transport.securing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * How a bundle is held under every push of a leg.
 *
 * @param holds one for each push; empty if something is missing
 * @param missing what is not known; {@code null} if all is
 */
public record Holds(
        Bundle bundle, List<Hold> holds, @Nullable String missing) {
    private static final double USUAL_FACTOR = 1.1;

    public Holds {
        holds = List.copyOf(holds);
    }

    /** Of every bundle of a load that is not held by the walls as one. */
    public static List<Holds> of(LegScene leg, PlacedLoad load) {
        List<Holds> all = new ArrayList<>();
        if (!load.load().packed()) {
            Bundle.of(leg, load).forEach(bundle -> all.add(of(leg, bundle)));
        }
        return all;
    }

    /** The same, and of what stands on others in each: that may slide or tip by itself. */
    public static List<Holds> withTiers(LegScene leg, PlacedLoad load) {
        List<Holds> all = new ArrayList<>();
        for (Holds whole : of(leg, load)) {
            all.add(whole);
            whole.bundle().tiers().forEach(tier -> all.add(of(leg, tier)));
        }
        return all;
    }

    /** The greatest force in each lashing of a load (N), by its key; without those that cannot be told. */
    public static Map<String, Double> forces(LegScene leg, PlacedLoad load) {
        Map<String, Double> forces = new LinkedHashMap<>();
        withTiers(leg, load)
                .forEach(holds -> holds.forces()
                        .forEach((rope, force) -> forces.merge(rope.lashing().key(), force, Math::max)));
        return forces;
    }

    public static Holds of(LegScene leg, Bundle bundle) {
        String unknown = bundle.unknown().orElse(null);
        if (unknown != null) {
            return new Holds(bundle, List.of(), unknown);
        }
        Optional<Double> friction = bundle.friction(leg);
        if (friction.isEmpty()) {
            return new Holds(bundle, List.of(), bundle.frictionUnknown());
        }
        List<Hold> holds = new ArrayList<>();
        String missing = null;
        double factor = leg.rules().valueOr(Figure.TIE_DOWN_FACTOR, USUAL_FACTOR);
        double dynamic = leg.journey().parts().transit().dynamicShare();
        for (Push push : Push.of(leg.rules(), factor)) {
            Hold hold = Hold.of(bundle, push, friction.get(), dynamic);
            missing = missing == null ? hold.missing() : missing;
            holds.add(hold);
        }
        return new Holds(bundle, missing == null ? holds : List.of(), missing);
    }

    /** The push under which it is held least; empty if there is none. */
    public Optional<Hold> worst() {
        return holds.stream().max(Comparator.comparingDouble(Hold::use));
    }

    /** The greatest force in each lashing (N): direct ones under the pushes that they act against, tie-downs their tension. */
    public Map<Rope, Double> forces() {
        Map<Rope, Double> forces = new LinkedHashMap<>();
        for (Rope rope : bundle.ropes()) {
            double most = rope.direct() ? 0 : Hold.tension(rope);
            for (Hold hold : holds) {
                boolean acts = rope.direct()
                        && (hold.push().toward() == Face.TOP
                                || -hold.push().along(rope.alongX(), rope.alongY()) > 0.05);
                most = acts ? Math.max(most, hold.lashingN()) : most;
            }
            forces.put(rope, most);
        }
        return forces;
    }
}
