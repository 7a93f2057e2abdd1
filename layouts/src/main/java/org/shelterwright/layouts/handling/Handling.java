package org.shelterwright.layouts.handling;

/**
 * How a unit is moved and set down.
 *
 * @param means by which means
 * @param people who are needed
 * @param massKg greatest mass of the unit (kg)
 * @param limitKg what the means and the people bear (kg)
 * @param onePersonKg what one person may lift here by the revised lifting equation (kg)
 */
public record Handling(Means means, int people, double massKg, double limitKg, double onePersonKg) {
    /** By which means. */
    public enum Means {
        BY_HAND("by hand"),
        TROLLEY("on the floor trolley"),
        HOIST("by hoist or lifting table");

        private final String words;

        Means(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Whether the means bears it. */
    public boolean held() {
        return massKg <= limitKg;
    }
}
