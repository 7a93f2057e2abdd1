package org.shelterwright.solver.load.model;

/**
 * Two classes of cargo that must not be near each other.
 *
 * @param one first class
 * @param other second class
 * @param distance free distance on the floor plane, along or across, that must lie between them (unit of the problem);
 *     {@link Integer#MAX_VALUE}: not in the same room
 */
public record Apart(String one, String other, int distance) {
    public Apart {
        if (distance < 1) {
            throw new IllegalArgumentException(
                    "The distance " + distance + " between " + one + " and " + other + " must be above zero.");
        }
        if (one.equals(other)) {
            throw new IllegalArgumentException("Class " + one + " cannot be kept apart from itself.");
        }
    }

    public static Apart notTogether(String one, String other) {
        return new Apart(one, other, Integer.MAX_VALUE);
    }
}
