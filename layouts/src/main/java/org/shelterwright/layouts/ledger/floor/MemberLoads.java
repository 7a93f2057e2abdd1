package org.shelterwright.layouts.ledger.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.catalog.body.CrossMember;
import org.shelterwright.layouts.scene.Scene;

/**
 * What each cross-member bears. Between two neighbouring cross-members the floor is a simply supported strip, so that a load in
 * between goes to them by the lever rule, patch by patch and spread evenly over each patch; what stands before the first or behind
 * the last one goes to that one whole.
 */
final class MemberLoads {
    /** Most combinations of contents that are tried for one cross-member. */
    private static final int MOST_COMBINATIONS = 1 << 12;

    /**
     * What one cross-member bears in the load states with the greatest moment and the greatest shear.
     *
     * @param all whether all combinations of contents were tried
     */
    record MemberLoad(CrossMember member, Governing moment, Governing shear, boolean all) {}

    /**
     * A sweep in its load state.
     *
     * @param shares the part of each patch that comes to the cross-member
     */
    record Governing(CrossMember member, FloorCase load, double[] shares, BeamSweep worst) {
        BeamSweep nominal() {
            return sweep(member, load, shares, load.nominal());
        }
    }

    private final List<MemberLoad> members = new ArrayList<>();

    private MemberLoads(Scene scene) {
        List<CrossMember> sorted = scene.body().crossMembers().stream()
                .sorted(Comparator.comparingInt(CrossMember::x))
                .toList();
        for (int i = 0; i < sorted.size(); i++) {
            Governing moment = null;
            Governing shear = null;
            boolean all = true;
            for (FloorSituation situation : FloorLoads.of(scene).situations()) {
                double[] shares = shares(sorted, i, situation.low());
                boolean[] touched = touched(situation, shares);
                all &= combinations(situation, touched) <= MOST_COMBINATIONS;
                int[] chosen = new int[touched.length];
                do {
                    Governing one = governing(sorted.get(i), situation, shares, chosen, touched);
                    moment = moment == null
                                    || one.worst().momentKgM() > moment.worst().momentKgM()
                            ? one
                            : moment;
                    shear = shear == null
                                    || one.worst().shearKg() > shear.worst().shearKg()
                            ? one
                            : shear;
                } while (all && next(situation, chosen, touched));
            }
            if (moment != null && shear != null) {
                members.add(new MemberLoad(sorted.get(i), moment, shear, all));
            }
        }
    }

    private static Governing governing(
            CrossMember member, FloorSituation situation, double[] shares, int[] chosen, boolean[] touched) {
        FloorCase load = touched.length == 0 ? situation.low() : situation.with(chosen, touched);
        return new Governing(member, load, shares, sweep(member, load, shares, load.worst()));
    }

    /** Which standings with contents bear on the member. */
    private static boolean[] touched(FloorSituation situation, double[] shares) {
        boolean[] touched = new boolean[situation.varied().size()];
        for (int v = 0; v < touched.length; v++) {
            FloorSituation.Varied one = situation.varied().get(v);
            for (int k = one.from(); k < one.from() + one.patches(); k++) {
                touched[v] |= shares[k] != 0;
            }
        }
        return touched;
    }

    private static double combinations(FloorSituation situation, boolean[] touched) {
        double count = 1;
        for (int v = 0; v < touched.length; v++) {
            count *= touched[v] ? situation.varied().get(v).worst().length : 1;
        }
        return count;
    }

    /** Goes on to the next combination, counting up; false after the last one. */
    private static boolean next(FloorSituation situation, int[] chosen, boolean[] touched) {
        for (int v = 0; v < chosen.length; v++) {
            if (touched[v]) {
                if (++chosen[v] < situation.varied().get(v).worst().length) {
                    return true;
                }
                chosen[v] = 0;
            }
        }
        return false;
    }

    static List<MemberLoad> of(Scene scene) {
        return scene.derived(MemberLoads.class, MemberLoads::new).members;
    }

    private static BeamSweep sweep(CrossMember member, FloorCase load, double[] shares, double[] loads) {
        double[] own = new double[loads.length];
        for (int k = 0; k < loads.length; k++) {
            own[k] = shares[k] * loads[k];
        }
        return BeamSweep.of(member, load.edgesY(), load.y0(), load.y1(), own);
    }

    /** The share of each patch that comes to cross-member i. */
    private static double[] shares(List<CrossMember> members, int i, FloorCase load) {
        int before = i == 0 ? Integer.MIN_VALUE : members.get(i - 1).x();
        int at = members.get(i).x();
        int after =
                i == members.size() - 1 ? Integer.MAX_VALUE : members.get(i + 1).x();
        double[] shares = new double[load.patches()];
        for (int k = 0; k < shares.length; k++) {
            shares[k] = share(load.x0()[k], load.x1()[k], before, at, after);
        }
        return shares;
    }

    /** Mean of the lever rule over a patch from x0 to x1: 1 over the member, falling to 0 at its neighbours. */
    static double share(long x0, long x1, long before, long at, long after) {
        double sum = 0;
        if (before == Integer.MIN_VALUE) {
            sum += Math.max(0, Math.min(x1, at) - x0);
        } else {
            sum += ramp(Math.max(x0, before), Math.min(x1, at), before, at);
        }
        if (after == Integer.MAX_VALUE) {
            sum += Math.max(0, x1 - Math.max(x0, at));
        } else {
            sum += ramp(-Math.min(x1, after), -Math.max(x0, at), -after, -at);
        }
        return sum / (x1 - x0);
    }

    /** Integral from x0 to x1 of a ramp that is 0 at {@code from} and 1 at {@code to}. */
    private static double ramp(long x0, long x1, long from, long to) {
        return x1 <= x0 ? 0 : ((x0 - from) + (double) (x1 - from)) / 2 / (to - from) * (x1 - x0);
    }
}
