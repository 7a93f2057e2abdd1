package org.shelterwright.layouts.power;

import org.shelterwright.catalog.item.Battery;

/**
 * Peukert's law: the higher the current, the less a battery gives. {@code t = H (C / (I H))^k}, with time t (h), rated time
 * H (h) of the rated capacity C (Ah), current I (A) and exponent k. Below the rated current the rated capacity is taken and
 * no more.
 *
 * <p>Source: W. Peukert, Elektrotechnische Zeitschrift 20 (1897), from memory; worked numbers beside the test.
 */
public final class Peukert {
    private Peukert() {}

    /**
     * Hours until the usable share of a battery is taken out.
     *
     * @param capacityShare share of the rated capacity that the battery has at its age
     * @param currentA constant current (A), above zero
     */
    public static double hours(Battery battery, double capacityShare, double currentA) {
        return battery.usableShare()
                * hours(battery.capacityAh() * capacityShare, battery.ratedHours(), battery.peukert(), currentA);
    }

    /**
     * Rated capacity (Ah) of a battery that is like another but lasts so long: the law turned round.
     *
     * @param hours time until its usable share is taken out (h)
     * @param currentA constant current (A), above zero
     */
    public static double capacityAh(Battery like, double capacityShare, double currentA, double hours) {
        double times = hours / (like.usableShare() * like.ratedHours());
        double ratio = times >= 1 ? times : Math.pow(times, 1 / like.peukert());
        return ratio * currentA * like.ratedHours() / capacityShare;
    }

    static double hours(double capacityAh, double ratedHours, double exponent, double currentA) {
        double ratio = capacityAh / (currentA * ratedHours);
        return ratedHours * (ratio >= 1 ? ratio : Math.pow(ratio, exponent));
    }
}
