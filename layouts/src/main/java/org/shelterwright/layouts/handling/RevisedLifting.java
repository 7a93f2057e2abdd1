package org.shelterwright.layouts.handling;

/**
 * The revised lifting equation: recommended weight limit {@code RWL = LC · HM · VM · DM · AM · FM · CM} for one person.
 *
 * <p>Source: Waters, Putz-Anderson, Garg: Applications manual for the revised NIOSH lifting equation, DHHS (NIOSH) 94-110,
 * rev. 9/2021, pages 12 to 31. Formulas as printed, without the rounding of its tables (which differ by up to 3 %).
 *
 * @param constantKg load constant LC: 23 kg
 * @param horizontalCm H: of the hands from the middle of the ankles
 * @param verticalCm V: of the hands above the floor
 * @param distanceCm D: travelled up or down by the hands
 * @param twistDegrees A: away from straight ahead
 * @param perMinute F: lifts in a minute, for at most an hour
 * @param grip CM: coupling multiplier, 0.9 to 1
 */
public record RevisedLifting(
        double constantKg,
        double horizontalCm,
        double verticalCm,
        double distanceCm,
        double twistDegrees,
        double perMinute,
        double grip) {
    private static final double[] RATES = {0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12};
    private static final double[] UP_TO_AN_HOUR = {
        1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.80, 0.75, 0.70, 0.60, 0.52, 0.45, 0.41, 0.37
    };

    /** HM = 25 / H; 1 within 25 cm, 0 beyond 63 cm. */
    public double horizontal() {
        return horizontalCm > 63 ? 0 : 25 / Math.max(25, horizontalCm);
    }

    /** VM = 1 − 0.003 |V − 75|; 0 above 175 cm. */
    public double vertical() {
        return verticalCm > 175 || verticalCm < 0 ? 0 : 1 - 0.003 * Math.abs(verticalCm - 75);
    }

    /** DM = 0.82 + 4.5 / D; 1 within 25 cm, 0 beyond 175 cm. */
    public double distance() {
        return distanceCm > 175 ? 0 : 0.82 + 4.5 / Math.max(25, distanceCm);
    }

    /** AM = 1 − 0.0032 A; 0 beyond 135°. */
    public double twist() {
        return twistDegrees > 135 ? 0 : 1 - 0.0032 * twistDegrees;
    }

    /** FM for work of at most an hour, the next higher rate of the table; 0 beyond 12 a minute. */
    public double frequency() {
        for (int i = 0; i < RATES.length; i++) {
            if (perMinute <= RATES[i]) {
                return UP_TO_AN_HOUR[i];
            }
        }
        return 0;
    }

    /** The recommended weight limit (kg). */
    public double limitKg() {
        return constantKg * horizontal() * vertical() * distance() * twist() * frequency() * grip;
    }

    /** Lifting index: the load over the limit; infinite where nothing may be lifted. */
    public double index(double loadKg) {
        return loadKg / limitKg();
    }
}
