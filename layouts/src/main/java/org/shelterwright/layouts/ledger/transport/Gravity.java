package org.shelterwright.layouts.ledger.transport;

/** Standard gravity, 3rd CGPM, 1901. */
public final class Gravity {
    /** m/s². */
    public static final double STANDARD = 9.80665;

    private Gravity() {}
}
