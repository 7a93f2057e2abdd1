package org.shelterwright.layouts.power;

import org.shelterwright.layouts.power.Consumer.Use;

/**
 * What one unit draws in one state.
 *
 * @param use {@code OFF} too if its supply is not live
 * @param connectedW what it draws at most (W)
 * @param connectedVA the same as apparent power (VA); for dc the same number
 * @param meanW what it draws in the mean over an hour (W)
 * @param heatW what of that warms the room (W)
 * @param line 0, 1 or 2; -1 if it takes all three
 */
public record Draw(
        Consumer consumer, Use use, double connectedW, double connectedVA, double meanW, double heatW, int line) {
    static final int ALL_LINES = -1;

    public boolean on() {
        return use == Use.ON;
    }
}
