package org.shelterwright.layouts.ledger.lifting;

import org.jspecify.annotations.Nullable;

/**
 * A four-leg sling whose hook hangs straight above the centre of mass, its legs made long or short so that the body hangs level.
 *
 * <p>Leg i bears {@code φ W s_i / sin θ_i}, with the weight W, the factor φ for the jerk of the crane, the angle θ_i of the leg above
 * the level, and the share s_i: the greater of the share of four legs and that of two across.
 *
 * @param points the eyes in plan
 * @param hookX place of the hook (m)
 * @param hookY place of the hook (m)
 * @param hookHeight height of the hook above the eyes (m)
 */
record Sling(FourPoints points, double hookX, double hookY, double hookHeight) {
    /**
     * Plans the sling: from the length of its longest leg if that is given, else from the angle of its flattest leg.
     *
     * @return a sling without height if its legs are too short to reach
     */
    static Sling of(FourPoints points, double x, double y, double angle, @Nullable Double lengthM) {
        double farthest = points.farthest(x, y);
        double height = lengthM == null
                ? farthest * Math.tan(angle)
                : Math.sqrt(Math.max(0, lengthM * lengthM - farthest * farthest));
        return new Sling(points, x, y, height);
    }

    double legLength(int leg) {
        return Math.hypot(distance(leg), hookHeight);
    }

    /** Angle of a leg above the level (radians). */
    double angle(int leg) {
        return Math.atan2(hookHeight, distance(leg));
    }

    double leastAngle() {
        return Math.atan2(hookHeight, points.farthest(hookX, hookY));
    }

    /** Share of the weight that a leg bears upright. */
    double share(int leg) {
        return Math.max(points.shares(hookX, hookY)[leg], points.sharesOfTwo(hookX, hookY)[leg]);
    }

    /** Force in a leg (N). */
    double legN(int leg, double weightN) {
        return weightN * share(leg) / Math.sin(angle(leg));
    }

    private double distance(int leg) {
        return Math.hypot(points.x(leg) - hookX, points.y(leg) - hookY);
    }
}
