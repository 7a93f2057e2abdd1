package org.shelterwright.layouts.brief;

/**
 * What people do, with the heat that one of them gives off in a room of 24 °C, averaged over men and women.
 *
 * <p>Source: ASHRAE Handbook Fundamentals 2009 and 2013, chapter 18, table 1. At 27 °C the same sum holds, with less of it
 * sensible.
 */
public enum Activity {
    SEATED_VERY_LIGHT(70, 45),
    OFFICE_WORK(75, 55),
    STANDING_LIGHT(75, 55),
    LIGHT_BENCH_WORK(80, 140),
    HEAVY_WORK(170, 255);

    private final double sensibleW;
    private final double latentW;

    Activity(double sensibleW, double latentW) {
        this.sensibleW = sensibleW;
        this.latentW = latentW;
    }

    /** Heat that warms the room (W). */
    public double sensibleW() {
        return sensibleW;
    }

    /** Heat in the moisture that they give off (W). */
    public double latentW() {
        return latentW;
    }
}
