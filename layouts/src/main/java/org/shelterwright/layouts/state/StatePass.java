package org.shelterwright.layouts.state;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes numerator − ratio · denominator most in one mode: every mass and fill at the end that its sign asks for, every
 * centre in the corner of its range that helps.
 */
final class StatePass {
    private final Mode mode;
    private final List<Fill> fills;
    private final double ratio;
    private final double[] gain;
    private final double[] fullN;
    private final double[] lowN;
    private final double[] fullD;
    private final double[] lowD;
    private double worstN;
    private double worstD;
    private double nominalN;
    private double nominalD;

    StatePass(Mode mode, List<Fill> fills, double ratio) {
        this.mode = mode;
        this.fills = fills;
        this.ratio = ratio;
        int count = fills.size();
        gain = new double[count];
        fullN = new double[count];
        lowN = new double[count];
        fullD = new double[count];
        lowD = new double[count];
    }

    void add(MassTable table, Influence n, Influence d) {
        Influence aim = ratio == 0 ? n : n.plus(d.times(-ratio));
        for (int i = 0; i < table.count(); i++) {
            double x = table.x(i);
            double y = table.y(i);
            double z = table.z(i);
            double atN = n.at(x, y, z);
            double atD = d.at(x, y, z);
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
                    double bestX = x + towards(aim.perX() + aim.perXy() * y, off);
                    double bestY = y + towards(aim.perY() + aim.perXy() * bestX, off);
                    if (aim.perXy() != 0) {
                        double otherX = 2 * x - bestX;
                        double otherY = y + towards(aim.perY() + aim.perXy() * otherX, off);
                        if (aim.at(otherX, otherY, z) > aim.at(bestX, bestY, z)) {
                            bestX = otherX;
                            bestY = otherY;
                        }
                    }
                    double bestZ = z + towards(aim.perZ(), off);
                    atN = n.at(bestX, bestY, bestZ);
                    atD = d.at(bestX, bestY, bestZ);
                }
                double mass = atN - ratio * atD > 0 ? table.most(i) : table.least(i);
                worstN += mass * atN;
                worstD += mass * atD;
            }
        }
    }

    private static double towards(double slope, double off) {
        return slope < 0 ? -off : off;
    }

    /** Sets the fills and adds the tares, once all tables are added. */
    void choose(double tareN, double tareD) {
        worstN += tareN;
        worstD += tareD;
        nominalN += tareN;
        nominalD += tareD;
        for (int i = 0; i < gain.length; i++) {
            double n = gain[i] >= 0 ? fullN[i] : lowN[i];
            double d = gain[i] >= 0 ? fullD[i] : lowD[i];
            worstN += n;
            worstD += d;
            nominalN += n;
            nominalD += d;
        }
    }

    double numerator() {
        return worstN;
    }

    double denominator() {
        return worstD;
    }

    double nominalNumerator() {
        return nominalN;
    }

    double nominalDenominator() {
        return nominalD;
    }

    LoadState state(boolean tellsTrailer) {
        List<Fill> full = new ArrayList<>();
        List<Fill> low = new ArrayList<>();
        for (int i = 0; i < gain.length; i++) {
            if (gain[i] > 0) {
                full.add(fills.get(i));
            } else if (gain[i] < 0) {
                low.add(fills.get(i));
            }
        }
        return new LoadState(mode, tellsTrailer, full, low);
    }
}
