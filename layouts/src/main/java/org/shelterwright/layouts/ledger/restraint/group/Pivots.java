package org.shelterwright.layouts.ledger.restraint.group;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The rarer states of a base that lifts: standing on one corner, or on nothing. Their equations are made when first needed. */
final class Pivots {
    private final double[] s;
    private final double[] t;
    private final double[] cs;
    private final double[] ct;
    private final double[] k;
    private final boolean[] oneWay;
    private final @Nullable Springs[] corners;
    private @Nullable Springs lifted;

    Pivots(double[] s, double[] t, double[] k, double[] cs, double[] ct) {
        this.s = s;
        this.t = t;
        this.k = k;
        this.cs = cs;
        this.ct = ct;
        oneWay = new boolean[s.length];
        Arrays.fill(oneWay, true);
        corners = new @Nullable Springs[cs.length];
    }

    private Springs about(int corner) {
        Springs springs = corners[corner];
        if (springs == null) {
            double[][] rows = new double[s.length][];
            for (int i = 0; i < s.length; i++) {
                rows[i] = new double[] {s[i] - cs[corner], t[i] - ct[corner]};
            }
            springs = new Springs(rows, k, oneWay, 2);
            corners[corner] = springs;
        }
        return springs;
    }

    private Springs lifted() {
        Springs springs = lifted;
        if (springs == null) {
            double[][] rows = new double[s.length][];
            for (int i = 0; i < s.length; i++) {
                rows[i] = new double[] {1, s[i], t[i]};
            }
            springs = new Springs(rows, k, oneWay, 3);
            lifted = springs;
        }
        return springs;
    }

    boolean aboutCorner(
            int corner, double p, double ms, double mt, double size, double slack, double[] pull, double[] press) {
        Springs springs = about(corner);
        double[] load = {ms - p * cs[corner], mt - p * ct[corner]};
        if (!springs.solve(load, size)) {
            return false;
        }
        double[] turn = springs.motion();
        double most = 0;
        for (int j = 0; j < cs.length; j++) {
            most = Math.max(most, Math.abs(turn[0] * (cs[j] - cs[corner]) + turn[1] * (ct[j] - ct[corner])));
        }
        for (int j = 0; j < cs.length; j++) {
            if (turn[0] * (cs[j] - cs[corner]) + turn[1] * (ct[j] - ct[corner]) < -slack * most) {
                return false;
            }
        }
        double under = take(springs, pull) - p;
        if (under < -slack * size) {
            return false;
        }
        Arrays.fill(press, 0);
        press[corner] = under;
        return true;
    }

    boolean free(double p, double ms, double mt, double size, double slack, double[] pull, double[] press) {
        Springs springs = lifted();
        if (!springs.solve(new double[] {p, ms, mt}, size)) {
            return false;
        }
        double[] motion = springs.motion();
        double most = 0;
        for (int i = 0; i < s.length; i++) {
            most = Math.max(most, Math.abs(motion[0] + motion[1] * s[i] + motion[2] * t[i]));
        }
        for (int j = 0; j < cs.length; j++) {
            if (motion[0] + motion[1] * cs[j] + motion[2] * ct[j] < -slack * most) {
                return false;
            }
        }
        take(springs, pull);
        Arrays.fill(press, 0);
        return true;
    }

    private static double take(Springs springs, double[] pull) {
        double sum = 0;
        for (int i = 0; i < pull.length; i++) {
            pull[i] = springs.force(i);
            sum += pull[i];
        }
        return sum;
    }
}
