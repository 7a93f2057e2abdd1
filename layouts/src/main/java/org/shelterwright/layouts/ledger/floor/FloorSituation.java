package org.shelterwright.layouts.ledger.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.state.Fill;
import org.shelterwright.layouts.state.LoadState;
import org.shelterwright.layouts.state.Mode;

/**
 * What presses on the floor on the road or on station, in every combination of contents. A sum of patch loads is most where
 * each standing by itself gives most, since none depends on another; of each standing, all combinations are tried.
 */
final class FloorSituation {
    private final Situation situation;
    private final FloorCase low;
    private final List<Varied> varied = new ArrayList<>();

    /**
     * A standing with contents.
     *
     * @param from its first patch
     * @param patches number of its patches
     * @param worst loads of its patches, by combination
     * @param nominal the same, nominal
     */
    record Varied(int from, int patches, List<Fill> fills, double[][] worst, double[][] nominal) {
        private static Varied of(Standing standing, int from, int patches) {
            double[][] worst = new double[standing.combinations()][patches];
            double[][] nominal = new double[standing.combinations()][patches];
            for (int c = 0; c < worst.length; c++) {
                standing.loads(c, worst[c], nominal[c], 0);
            }
            return new Varied(from, patches, standing.fills(), worst, nominal);
        }

        double sum(int combination, IntToDoubleFunction weight) {
            double sum = 0;
            for (int k = 0; k < patches; k++) {
                sum += weight.applyAsDouble(from + k) * worst[combination][k];
            }
            return sum;
        }

        /** The combination whose weighted sum is most; the one with less in it if several are. */
        int best(IntToDoubleFunction weight) {
            int best = 0;
            double most = sum(0, weight);
            for (int c = 1; c < worst.length; c++) {
                double sum = sum(c, weight);
                if (sum > most) {
                    most = sum;
                    best = c;
                }
            }
            return best;
        }
    }

    FloorSituation(Situation situation, List<Standing> standings) {
        this.situation = situation;
        low = FloorCase.low(standings, text(List.of(), List.of()));
        int at = 0;
        for (Standing one : standings) {
            int patches = one.footing().patches().size();
            if (one.combinations() > 1) {
                varied.add(Varied.of(one, at, patches));
            }
            at += patches;
        }
    }

    /** All contents at their least. */
    FloorCase low() {
        return low;
    }

    List<Varied> varied() {
        return varied;
    }

    /** The most that one patch bears in the worst case, without what an uncertain centre adds (kg). */
    double most(int patch) {
        for (Varied one : varied) {
            if (patch >= one.from() && patch < one.from() + one.patches()) {
                double most = 0;
                for (double[] loads : one.worst()) {
                    most = Math.max(most, loads[patch - one.from()]);
                }
                return most;
            }
        }
        return low.worst()[patch];
    }

    /** The load state in which a weighted sum of the loads of all patches is most; it names the contents that matter. */
    FloorCase most(IntToDoubleFunction weight) {
        int[] chosen = new int[varied.size()];
        List<Fill> full = new ArrayList<>();
        List<Fill> least = new ArrayList<>();
        for (int v = 0; v < chosen.length; v++) {
            Varied one = varied.get(v);
            chosen[v] = one.best(weight);
            double most = one.sum(chosen[v], weight);
            for (int i = 0; i < one.fills().size(); i++) {
                if (one.sum(chosen[v] ^ 1 << i, weight) != most) {
                    (((chosen[v] >> i & 1) == 1) ? full : least).add(one.fills().get(i));
                }
            }
        }
        return with(chosen, text(full, least));
    }

    /** The load state of the given combinations; it names the contents of the standings that are asked for. */
    FloorCase with(int[] chosen, boolean[] named) {
        List<Fill> full = new ArrayList<>();
        List<Fill> least = new ArrayList<>();
        for (int v = 0; v < chosen.length; v++) {
            List<Fill> fills = named[v] ? varied.get(v).fills() : List.of();
            for (int i = 0; i < fills.size(); i++) {
                (((chosen[v] >> i & 1) == 1) ? full : least).add(fills.get(i));
            }
        }
        return with(chosen, text(full, least));
    }

    private FloorCase with(int[] chosen, String state) {
        double[] worst = low.worst().clone();
        double[] nominal = low.nominal().clone();
        for (int v = 0; v < chosen.length; v++) {
            Varied one = varied.get(v);
            System.arraycopy(one.worst()[chosen[v]], 0, worst, one.from(), one.patches());
            System.arraycopy(one.nominal()[chosen[v]], 0, nominal, one.from(), one.patches());
        }
        return low.with(worst, nominal, state);
    }

    private String text(List<Fill> full, List<Fill> least) {
        return new LoadState(new Mode(situation, false), false, full, least).text();
    }
}
