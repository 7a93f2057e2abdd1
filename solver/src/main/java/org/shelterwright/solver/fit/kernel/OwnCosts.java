package org.shelterwright.solver.fit.kernel;

import org.shelterwright.solver.fit.model.BodyTerms;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Shape;
import org.shelterwright.solver.fit.model.Slot;

/** What every unit breaks by itself, whatever else is there (µm); a scored change is made or forgotten. Not for several threads. */
final class OwnCosts {
    /** What a unit counts that looks another way than what it is mounted on (µm): people read and plug from one side. */
    private static final long ASKEW = 200_000;

    private final FitProblem problem;
    private final State state;
    private final boolean zones;
    private final long[] hard;
    private final long[] medium;
    private final long[] soft;
    private long probedHard;
    private long probedMedium;
    private long probedSoft;

    OwnCosts(FitProblem problem, State state) {
        this.problem = problem;
        this.state = state;
        this.zones = problem.counts("access.zone-inside");
        this.hard = new long[problem.size()];
        this.medium = new long[problem.size()];
        this.soft = new long[problem.size()];
    }

    long hard(int slot) {
        return hard[slot];
    }

    long medium(int slot) {
        return medium[slot];
    }

    long soft(int slot) {
        return soft[slot];
    }

    long probedHard() {
        return probedHard;
    }

    long probedMedium() {
        return probedMedium;
    }

    long probedSoft() {
        return probedSoft;
    }

    /** Scores a slot at a place; the worse of both situations counts, limit by limit. */
    void probe(int slot, Option candidate, int px, int py, int pz) {
        BodyTerms terms = problem.bodyTerms();
        Slot its = problem.slot(slot);
        Shape first = its.onStation() ? candidate.station() : candidate.road();
        Shape second = its.onTheRoad() ? candidate.road() : candidate.station();
        boolean one = first == second || candidate.steady();
        long hardAmount = terms.outside(first, px, py, pz);
        if (!one) {
            hardAmount = Math.max(hardAmount, terms.outside(second, px, py, pz));
        }
        for (int i = 0; i < terms.intrusions(); i++) {
            int depth = terms.intrusion(i, first, px, py, pz);
            hardAmount += one ? depth : Math.max(depth, terms.intrusion(i, second, px, py, pz));
        }
        for (int i = 0; i < terms.swings(); i++) {
            int depth = terms.doorBlocked(i, first, px, py, pz);
            hardAmount += one ? depth : Math.max(depth, terms.doorBlocked(i, second, px, py, pz));
            hardAmount += its.onStation() ? terms.exitCrossed(i, candidate.station(), px, py, pz) : 0;
        }
        long mediumAmount = zones ? terms.zonesInside(first, px, py, pz) : 0;
        if (zones && !one) {
            mediumAmount = Math.max(mediumAmount, terms.zonesInside(second, px, py, pz));
        }
        if (its.onStation()) {
            for (int height : candidate.controls()) {
                mediumAmount += Math.max(0, pz + height - problem.access().reach());
            }
        }
        probedHard = hardAmount;
        probedMedium = mediumAmount;
        probedSoft = askew(candidate);
    }

    /** Takes over what was scored last. */
    void commit(int slot) {
        hard[slot] = probedHard;
        medium[slot] = probedMedium;
        soft[slot] = probedSoft;
    }

    void clear(int slot) {
        hard[slot] = 0;
        medium[slot] = 0;
        soft[slot] = 0;
    }

    /** What a unit carries may look another way than it does, now that it has moved; gives the change of the soft amounts. */
    long hostMoved(int host) {
        long change = 0;
        for (int j = 0; j < soft.length; j++) {
            Option.Berth berth = state.placed[j] ? state.option[j].berth() : null;
            if (berth != null && berth.slot() == host) {
                long now = askew(state.option[j]);
                change += now - soft[j];
                soft[j] = now;
            }
        }
        return change;
    }

    private long askew(Option candidate) {
        Option.Berth berth = candidate.berth();
        boolean askew =
                berth != null && state.placed[berth.slot()] && state.option[berth.slot()].turn() != candidate.turn();
        return askew ? ASKEW : 0;
    }
}
