package org.shelterwright.layouts.state;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.shelterwright.catalog.item.Situation;

/**
 * Makes numerator − ratio · denominator most in one situation: every mass and fill at the end that its sign asks for, every
 * centre in the corner of its range that helps, and the trailer coupled if that helps and both are allowed. Keeps the best found.
 */
final class StateSearch {
    private final LoadStates states;
    private final Quantity n;
    private final Quantity d;
    private final List<Fill> fills;
    private final double[] gain;
    private final double[] fullN;
    private final double[] lowN;
    private final double[] fullD;
    private final double[] lowD;
    private double worstN;
    private double worstD;
    private double nominalN;
    private double nominalD;
    private boolean trailer;
    private Situation situation = Situation.ON_THE_ROAD;

    private boolean found;
    private double bestN;
    private double bestD;
    private double bestNominalN;
    private double bestNominalD;
    private boolean bestTrailer;
    private Situation bestSituation = Situation.ON_THE_ROAD;
    private final double[] bestGain;

    StateSearch(LoadStates states, List<Fill> fills, Quantity n, Quantity d) {
        this.states = states;
        this.n = n;
        this.d = d;
        this.fills = fills;
        int count = fills.size();
        gain = new double[count];
        fullN = new double[count];
        lowN = new double[count];
        fullD = new double[count];
        lowD = new double[count];
        bestGain = new double[count];
    }

    /** Looks for the most of numerator − ratio · denominator. */
    void look(ModeSet allowed, double ratio) {
        situation = allowed.situation();
        worstN = n.carrierTare();
        worstD = d.carrierTare();
        nominalN = worstN;
        nominalD = worstD;
        Arrays.fill(gain, 0);
        Arrays.fill(fullN, 0);
        Arrays.fill(lowN, 0);
        Arrays.fill(fullD, 0);
        Arrays.fill(lowD, 0);
        trailer = false;
        add(states.table(Holder.BODY, situation), n.body(), d.body(), ratio);
        add(states.table(Holder.CARRIER, situation), n.carrier(), d.carrier(), ratio);
        int ofTrailer = states.firstTrailerFill();
        choose(0, ofTrailer);
        if (allowed.trailerOn()) {
            double baseN = worstN;
            double baseD = worstD;
            double baseNominalN = nominalN;
            double baseNominalD = nominalD;
            worstN += n.trailerTare();
            worstD += d.trailerTare();
            nominalN += n.trailerTare();
            nominalD += d.trailerTare();
            add(states.table(Holder.TRAILER, situation), n.trailer(), d.trailer(), ratio);
            choose(ofTrailer, gain.length);
            trailer = !allowed.trailerOff() || worstN - baseN - ratio * (worstD - baseD) >= 0;
            if (!trailer) {
                worstN = baseN;
                worstD = baseD;
                nominalN = baseNominalN;
                nominalD = baseNominalD;
                Arrays.fill(gain, ofTrailer, gain.length, 0);
            }
        }
    }

    private void add(MassTable table, Influence ofN, Influence ofD, double ratio) {
        if (ofN.none() && ofD.none()) {
            return;
        }
        Influence aim = ratio == 0 ? ofN : ofN.plus(ofD.times(-ratio));
        boolean linear = ofD.none();
        for (int i = 0; i < table.count(); i++) {
            double x = table.x(i);
            double y = table.y(i);
            double z = table.z(i);
            double atN = ofN.at(x, y, z);
            double atD = linear ? 0 : ofD.at(x, y, z);
            int fill = table.fill(i);
            if (fill >= 0) {
                gain[fill] += (table.most(i) - table.least(i)) * (atN - ratio * atD);
                fullN[fill] += table.most(i) * atN;
                lowN[fill] += table.least(i) * atN;
                fullD[fill] += table.most(i) * atD;
                lowD[fill] += table.least(i) * atD;
            } else {
                nominalN += table.nominal(i) * atN;
                nominalD += table.nominal(i) * atD;
                double off = table.off(i);
                if (off > 0) {
                    double dx = aim.perX() + aim.perXy() * y < 0 ? -off : off;
                    double dy = aim.perY() + aim.perXy() * (x + dx) < 0 ? -off : off;
                    if (aim.perXy() != 0) {
                        double otherDy = aim.perY() + aim.perXy() * (x - dx) < 0 ? -off : off;
                        if (aim.at(x - dx, y + otherDy, z) > aim.at(x + dx, y + dy, z)) {
                            dx = -dx;
                            dy = otherDy;
                        }
                    }
                    double dz = aim.perZ() < 0 ? -off : off;
                    atN = ofN.at(x + dx, y + dy, z + dz);
                    atD = ofD.at(x + dx, y + dy, z + dz);
                }
                double mass = atN - ratio * atD > 0 ? table.most(i) : table.least(i);
                worstN += mass * atN;
                worstD += mass * atD;
            }
        }
    }

    private void choose(int from, int to) {
        for (int i = from; i < to; i++) {
            boolean full = gain[i] >= 0;
            double ofN = full ? fullN[i] : lowN[i];
            double ofD = full ? fullD[i] : lowD[i];
            worstN += ofN;
            worstD += ofD;
            nominalN += ofN;
            nominalD += ofD;
        }
    }

    /** What the last look found. */
    double numerator() {
        return worstN;
    }

    double ratio() {
        return worstN / worstD;
    }

    /** Keeps what the last look found as the best so far. */
    void keep() {
        found = true;
        bestN = worstN;
        bestD = worstD;
        bestNominalN = nominalN;
        bestNominalD = nominalD;
        bestTrailer = trailer;
        bestSituation = situation;
        System.arraycopy(gain, 0, bestGain, 0, gain.length);
    }

    boolean found() {
        return found;
    }

    double bestNumerator() {
        return bestN;
    }

    double bestRatio() {
        return bestN / bestD;
    }

    Extreme bestSum(boolean hasTrailer) {
        return new Extreme(bestN, bestNominalN, state(hasTrailer));
    }

    Extreme bestShare(boolean hasTrailer) {
        return new Extreme(bestN / bestD, bestNominalN / bestNominalD, state(hasTrailer));
    }

    private LoadState state(boolean hasTrailer) {
        List<Fill> full = new ArrayList<>();
        List<Fill> low = new ArrayList<>();
        for (int i = 0; i < bestGain.length; i++) {
            if (bestGain[i] > 0) {
                full.add(fills.get(i));
            } else if (bestGain[i] < 0) {
                low.add(fills.get(i));
            }
        }
        boolean tellsTrailer = hasTrailer && (n.usesTrailer() || d.usesTrailer());
        return new LoadState(new Mode(bestSituation, bestTrailer), tellsTrailer, full, low);
    }
}
