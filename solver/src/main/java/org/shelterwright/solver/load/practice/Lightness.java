package org.shelterwright.solver.load.practice;

import java.util.function.ToDoubleFunction;
import org.shelterwright.solver.load.block.Block;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;

/**
 * Where the mass limit is reached before the room is full, light pieces are worth more than their volume tells: each takes
 * less of what is scarce.
 */
public final class Lightness {
    private Lightness() {}

    /** A factor for each block: mean density over its own where mass is scarcer than volume, else 1. */
    public static ToDoubleFunction<Block> of(LoadProblem problem) {
        double limit = problem.practice().massLimitKg();
        double mass = 0;
        double volume = 0;
        for (CargoKind kind : problem.kinds()) {
            mass += kind.count() * kind.massKg();
            volume += kind.count() * kind.volume();
        }
        if (!(limit / mass < Math.min(1, problem.roomVolume() / volume))) {
            return block -> 1;
        }
        double density = mass / volume;
        return block -> density * block.volume() / massKg(problem, block);
    }

    private static double massKg(LoadProblem problem, Block block) {
        double mass = 0;
        for (int i = 0; i < block.kinds().length; i++) {
            mass += block.counts()[i] * problem.kinds().get(block.kinds()[i]).massKg();
        }
        return mass;
    }
}
