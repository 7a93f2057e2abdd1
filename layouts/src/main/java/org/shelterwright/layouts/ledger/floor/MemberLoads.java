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
    /**
     * Moment and shear of one cross-member in their governing load states.
     *
     * @param moment the sweep of the state with the greatest moment, and its nominal twin
     * @param shear the sweep of the state with the greatest shear, and its nominal twin
     */
    record MemberLoad(CrossMember member, Governing moment, Governing shear) {}

    record Governing(BeamSweep worst, BeamSweep nominal, FloorCase load) {}

    private final List<MemberLoad> members = new ArrayList<>();

    private MemberLoads(Scene scene) {
        List<CrossMember> sorted = scene.body().crossMembers().stream()
                .sorted(Comparator.comparingInt(CrossMember::x))
                .toList();
        List<FloorCase> cases = FloorLoads.of(scene).cases();
        for (int i = 0; i < sorted.size(); i++) {
            Governing moment = null;
            Governing shear = null;
            for (FloorCase load : cases) {
                double[] shares = shares(sorted, i, load);
                Governing one = new Governing(
                        sweep(sorted.get(i), load, shares, load.worst()),
                        sweep(sorted.get(i), load, shares, load.nominal()),
                        load);
                moment = moment == null
                                || one.worst().momentKgM() > moment.worst().momentKgM()
                        ? one
                        : moment;
                shear = shear == null || one.worst().shearKg() > shear.worst().shearKg() ? one : shear;
            }
            if (moment != null && shear != null) {
                members.add(new MemberLoad(sorted.get(i), moment, shear));
            }
        }
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
