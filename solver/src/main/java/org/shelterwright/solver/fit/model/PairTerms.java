package org.shelterwright.solver.fit.model;

import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;

/**
 * The compiled pair limits: what two units do to each other, as a depth (µm) for each situation that both share. A test
 * holds each equal to its limit class.
 */
public final class PairTerms {
    private PairTerms() {}

    /** Depth to which solids of one stand in solids of the other. The shift is that of b against a (µm). */
    public static int overlap(Option a, Option b, Situation situation, int dx, int dy, int dz) {
        return Depths.greatest(a.shape(situation).solids(), b.shape(situation).solids(), dx, dy, dz);
    }

    /** How many holes of the body both need; only for units that touch or overlap. */
    public static int sharedHoles(Option a, Option b, int dx, int dy, int dz) {
        int[] one = a.holes();
        int[] other = b.holes();
        int shared = 0;
        for (int i = 0; i < one.length; i += 3) {
            for (int j = 0; j < other.length; j += 3) {
                if (one[i] == other[j] + dx && one[i + 1] == other[j + 1] + dy && one[i + 2] == other[j + 2] + dz) {
                    shared++;
                }
            }
        }
        return shared;
    }

    /** Depth to which solids of one stand in clear zones of the other, both ways. */
    public static int intrusion(Option a, Option b, Situation situation, int dx, int dy, int dz) {
        Shape sa = a.shape(situation);
        Shape sb = b.shape(situation);
        return zones(sa, sb, dx, dy, dz) + zones(sb, sa, -dx, -dy, -dz);
    }

    private static int zones(Shape keeper, Shape other, int dx, int dy, int dz) {
        int sum = 0;
        int[] zones = keeper.zones();
        int[] solids = other.solids();
        for (int i = 0; i < zones.length; i += 6) {
            int worst = 0;
            for (int j = 0; j < solids.length; j += 6) {
                worst = Math.max(worst, Depths.depth(zones, i, solids, j, dx, dy, dz));
            }
            sum += worst;
        }
        return sum;
    }

    /** Depth to which zones of two purposes share space, either way. */
    public static int shared(
            Option a, Option b, Situation situation, Purpose one, Purpose other, int dx, int dy, int dz) {
        Shape sa = a.shape(situation);
        Shape sb = b.shape(situation);
        int sum = 0;
        for (int i = 0; i < sa.purposes().length; i++) {
            for (int j = 0; j < sb.purposes().length; j++) {
                Purpose pa = sa.purposes()[i];
                Purpose pb = sb.purposes()[j];
                if (pa == one && pb == other || pa == other && pb == one) {
                    sum += Depths.depth(sa.zones(), 6 * i, sb.zones(), 6 * j, dx, dy, dz);
                }
            }
        }
        return sum;
    }
}
