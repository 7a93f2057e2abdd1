package org.shelterwright.catalog.plausible;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.space.Lengths;

/** What is odd about a carrier: bounds from common practice on roads. */
public final class CarrierOddities {
    private static final int NARROW = Lengths.M;
    private static final int WIDE = 3 * Lengths.M;
    private static final double HEAVY_AXLE_KG = 20_000;
    private static final double ABSURD_AXLE_KG = 200_000;

    private CarrierOddities() {}

    public static List<Oddity> of(Carrier carrier) {
        List<Oddity> found = new ArrayList<>();
        double tareKg = 0;
        for (Axle axle : carrier.axles()) {
            tareKg += axle.tareKg();
            String name = "of axle " + axle.name() + " of carrier " + carrier.id();
            if (axle.track() < NARROW || axle.track() > WIDE) {
                found.add(Oddity.doubtful(
                        "axles",
                        "The track of " + Lengths.format(axle.track()) + " mm " + name
                                + " is not from 1 m to 3 m. Is it right?"));
            }
            Double ratingKg = axle.ratingKg();
            if (ratingKg != null && ratingKg > HEAVY_AXLE_KG) {
                String sentence = String.format(
                        Locale.ROOT, "The rating of %.0f kg %s is above %.0f kg.", ratingKg, name, HEAVY_AXLE_KG);
                found.add(
                        ratingKg > ABSURD_AXLE_KG
                                ? Oddity.absurd("axles", sentence + " Correct it: ratings are in kg.")
                                : Oddity.doubtful("axles", sentence + " Is it right?"));
            }
        }
        Double grossKg = carrier.grossRatingKg();
        if (grossKg != null && grossKg < tareKg) {
            found.add(Oddity.absurd(
                    "grossRatingKg",
                    String.format(
                            Locale.ROOT,
                            "The gross rating of %.0f kg of carrier %s is below its tare of %.0f kg. Correct one of them.",
                            grossKg,
                            carrier.id(),
                            tareKg)));
        }
        return found;
    }
}
