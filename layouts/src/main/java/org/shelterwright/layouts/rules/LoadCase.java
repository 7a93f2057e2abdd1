package org.shelterwright.layouts.rules;

import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.QuarterTurn;

/**
 * Accelerations that everything must be held against, each direction by itself, in multiples of standard gravity. They push the
 * load that way, as it feels them.
 *
 * @param id such as "road-en-12195-1"
 * @param name such as "road (EN 12195-1)"
 * @param forwardG push forward, as in braking; zero if the case has none
 * @param rearwardG push rearward
 * @param sidewaysG push to either side
 * @param upG push up with nothing along the floor, weight already taken off
 * @param downG push down with nothing along the floor, weight included
 * @param leastDownG least push down that goes with a push along the floor
 * @param mostDownG greatest push down that goes with a push along the floor
 * @param forwardFactor safety factor on the push forward
 * @param factor safety factor on the other pushes
 * @param basis which strength of a bolt counts
 */
public record LoadCase(
        String id,
        String name,
        double forwardG,
        double rearwardG,
        double sidewaysG,
        double upG,
        double downG,
        double leastDownG,
        double mostDownG,
        double forwardFactor,
        double factor,
        Basis basis,
        Source source) {
    /** Against which strength of a bolt a load case is held. */
    public enum Basis {
        /** Nothing yields: the proof load. */
        PROOF,
        /** Nothing comes off, though it may yield: the ultimate load. */
        ULTIMATE
    }

    private static final double LARGEST_G = 100;

    /**
     * The same case as something feels it that is turned on what carries it. Each push keeps its own safety factor: all are stated with the
     * greater of the two, and those that have the lesser one are themselves so much less.
     */
    public LoadCase turned(QuarterTurn yaw) {
        if (yaw == QuarterTurn.R0) {
            return this;
        }
        double most = Math.max(forwardFactor, factor);
        double others = factor / most;
        double forward = forwardG * (forwardFactor / most);
        double rearward = rearwardG * others;
        double sideways = sidewaysG * others;
        boolean round = yaw == QuarterTurn.R180;
        return new LoadCase(
                id,
                name,
                round ? rearward : sideways,
                round ? forward : sideways,
                round ? sideways : Math.max(forward, rearward),
                upG * others,
                downG * others,
                leastDownG,
                mostDownG,
                most,
                most,
                basis,
                source);
    }

    public LoadCase {
        Figures.within("push forward (g)", forwardG, 0, LARGEST_G);
        Figures.within("push rearward (g)", rearwardG, 0, LARGEST_G);
        Figures.within("push sideways (g)", sidewaysG, 0, LARGEST_G);
        Figures.within("push up (g)", upG, 0, LARGEST_G);
        Figures.within("push down (g)", downG, 0, LARGEST_G);
        Figures.within("least push down (g)", leastDownG, -LARGEST_G, LARGEST_G);
        Figures.within("greatest push down (g)", mostDownG, leastDownG, LARGEST_G);
        Figures.within("safety factor forward", forwardFactor, 1, 10);
        Figures.within("safety factor", factor, 1, 10);
    }
}
