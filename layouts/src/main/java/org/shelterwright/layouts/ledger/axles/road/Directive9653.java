package org.shelterwright.layouts.ledger.axles.road;

import java.util.OptionalDouble;

/**
 * The tables of Council Directive 96/53/EC, Annex I, as amended by 2002/7/EC and (EU) 2015/719. Masses in kg, distances in µm.
 * Boundaries belong to the classes as the inequalities of the directive say: 1.00, 1.30 and 1.80 m begin the next class of
 * tandem axles, 1.30 and 1.40 m end a class of tri-axles.
 *
 * <p>Read as quoted in national texts; see the theory manual.
 */
final class Directive9653 {
    static final int TANDEM = 1_800_000;
    static final int TRI_AXLE = 1_400_000;
    static final double LENGTH_MM = 12_000;
    static final double ROAD_TRAIN_MM = 18_750;
    static final double WIDTH_MM = 2_550;
    static final double HEIGHT_MM = 4_000;
    static final double FIVE_AXLE_COMBINATION_KG = 40_000;
    static final double FOUR_AXLE_COMBINATION_KG = 36_000;
    /** Load of each driving axle up to which twin tyres alone earn the higher figure (kg). */
    static final double TWIN_TYRES_KG = 9_500;

    private Directive9653() {}

    /** Points 3.1 and 3.4. */
    static double singleAxleKg(boolean driving) {
        return driving ? 11_500 : 10_000;
    }

    /**
     * Points 3.2 and 3.5: two axles.
     *
     * @param motor of a motor vehicle; else of a trailer
     * @param higher whether the condition of twin tyres and air suspension is met
     */
    static double tandemKg(boolean motor, int distance, boolean higher) {
        if (distance < 1_000_000) {
            return motor ? 11_500 : 11_000;
        }
        if (distance < 1_300_000) {
            return 16_000;
        }
        if (distance < TANDEM) {
            return motor && higher ? 19_000 : 18_000;
        }
        return 20_000;
    }

    /** Point 3.3: three axles of a trailer, each the given distance from the next; empty beyond 1.4 m. */
    static OptionalDouble triAxleKg(int distance) {
        if (distance > TRI_AXLE) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(distance <= 1_300_000 ? 21_000 : 24_000);
    }

    /**
     * Point 2.3: motor vehicles.
     *
     * @param steered number of steered axles
     * @param outerDistance between the outer axles, for the rule of five times the distance in metres (point 4.3)
     * @param higher whether the condition of twin tyres and air suspension is met
     * @return empty if the directive names no such vehicle
     */
    static OptionalDouble motorVehicleKg(int axles, int steered, int outerDistance, boolean higher) {
        return switch (axles) {
            case 2 -> OptionalDouble.of(18_000);
            case 3 -> OptionalDouble.of(higher ? 26_000 : 25_000);
            case 4 ->
                steered == 2 && higher
                        ? OptionalDouble.of(Math.min(32_000, 5 * outerDistance * 1e-3))
                        : OptionalDouble.empty();
            default -> OptionalDouble.empty();
        };
    }

    /** Point 2.1: trailers; empty if the directive names no such trailer. */
    static OptionalDouble trailerKg(int axles) {
        return switch (axles) {
            case 2 -> OptionalDouble.of(18_000);
            case 3 -> OptionalDouble.of(24_000);
            default -> OptionalDouble.empty();
        };
    }
}
