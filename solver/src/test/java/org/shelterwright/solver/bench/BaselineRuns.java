package org.shelterwright.solver.bench;

import java.time.Duration;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.planted.PlantedFit;

/** The search beside two other ways to search the same planted fits, in one run and judged alike. */
final class BaselineRuns {
    private final Setting setting;

    BaselineRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        Checker checker = Checker.standard();
        new Reach(new StandardFitter(checker), 2)
                .toReach(PlantedFit.of(99, 20, 0.2).question(), 99, Duration.ofSeconds(5), Reach.ALL_MET);
        long end = setting.endNanos();
        BesideStreams streams = new BesideStreams(checker);
        for (PlantedCase one : BesideStreams.CASES) {
            if (System.nanoTime() < end) {
                streams.run(one, setting.seed());
            }
        }
        BesideExact exact = new BesideExact(checker);
        for (PlantedCase one : BesideExact.CASES) {
            if (System.nanoTime() < end) {
                exact.run(one, setting.seed());
            }
        }
        return """
                # The search beside other ways to search

                Planted fits (see planted.md) with wishes. "Kept": the known solution keeps them all; every fourth unit shall
                face as it does there, every fourth shall be near another, and units that touch the rear wall shall stand at
                it. "At odds": every third unit shall be near another and every fourth face a side, taken by chance. No walkway
                is asked for. All ways start from the same greedy construction, since the planning engine's own construction
                tries every place of every unit, which are tens of thousands; all choose from the same anchors (on walls the
                others from a grid of 25 mm); all results are judged by the full ledger and by one score function, from
                scratch: hard is overlap and bolts without a hole of their own, medium is clear zones, soft is the centre of
                mass off the middle and high, and wishes not kept.

                %s
                Seed %d. Date: %s.

                %s
                %s""".formatted(machine.text(), setting.seed(), setting.date(), streams.text(), exact.text());
    }
}
