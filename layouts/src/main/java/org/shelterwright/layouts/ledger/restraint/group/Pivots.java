package org.shelterwright.layouts.ledger.restraint.group;

import java.util.Arrays;

/** The rarer states of a base that lifts: standing on one corner, or on nothing. */
final class Pivots {
    private final double[] s;
    private final double[] t;
    private final double[] cs;
    private final double[] ct;
    private final Springs[] corners;
    private final Springs lifted;

    Pivots(double[] s, double[] t, double[] k, double[] cs, double[] ct) {
        this.s = s;
        this.t = t;
        this.cs = cs;
        this.ct = ct;
        boolean[] oneWay = new boolean[s.length];
        Arrays.fill(oneWay, true);
        corners = new Springs[cs.length];
        for (int corner = 0; corner < cs.length; corner++) {
            double[][] rows = new double[s.length][];
            for (int i = 0; i < s.length; i++) {
                rows[i] = new double[] {s[i] - cs[corner], t[i] - ct[corner]};
            }
            corners[corner] = new Springs(rows, k, oneWay, 2);
        }
        double[][] rows = new double[s.length][];
        for (int i = 0; i < s.length; i++) {
            rows[i] = new double[] {1, s[i], t[i]};
        }
        lifted = new Springs(rows, k, oneWay, 3);
    }

    boolean aboutCorner(
            int corner, double p, double ms, double mt, double size, double slack, double[] pull, double[] press) {
        Springs springs = corners[corner];
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
        if (!lifted.solve(new double[] {p, ms, mt}, size)) {
            return false;
        }
        double[] motion = lifted.motion();
        double most = 0;
        for (int i = 0; i < s.length; i++) {
            most = Math.max(most, Math.abs(motion[0] + motion[1] * s[i] + motion[2] * t[i]));
        }
        for (int j = 0; j < cs.length; j++) {
            if (motion[0] + motion[1] * cs[j] + motion[2] * ct[j] < -slack * most) {
                return false;
            }
        }
        take(lifted, pull);
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
