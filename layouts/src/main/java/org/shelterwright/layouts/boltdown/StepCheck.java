package org.shelterwright.layouts.boltdown;

import org.jspecify.annotations.Nullable;

/**
 * Something that is looked at, measured or tightened, and signed for.
 *
 * @param id stable within the order, such as "rack-2/x"
 * @param text what must be so
 * @param hint how it is looked at
 * @param expected what is to be measured; {@code null} if nothing is
 * @param unit unit of that, such as "mm" or "N·m"; empty if nothing is measured
 * @param tolerance how far off it may be, in that unit
 */
public record StepCheck(
        String id,
        Kind kind,
        String text,
        String hint,
        @Nullable Double expected,
        String unit,
        double tolerance) {
    /** What is done. */
    public enum Kind {
        POSITION,
        TORQUE,
        LOOK,
        TEST
    }
}
