package org.shelterwright.catalog.plausible;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.catalog.transit.WheelGroup;

/** What is odd about a transit car: bounds from common practice. */
public final class TransitCarOddities {
    private static final int WIDE = 4 * Lengths.M;
    private static final int LONG = 120 * Lengths.M;
    private static final double HEAVY_AXLE_KG = 40_000;

    private TransitCarOddities() {}

    public static List<Oddity> of(TransitCar car) {
        List<Oddity> found = new ArrayList<>();
        boolean ship = car.kind() == TransitCar.Kind.SHIP_DECK;
        if (!ship && (car.deck().width() > 2 * WIDE || car.deck().length() > LONG)) {
            found.add(Oddity.absurd(
                    "deck",
                    "The deck of " + Lengths.format(car.deck().length()) + " x "
                            + Lengths.format(car.deck().width()) + " mm of car " + car.id()
                            + " is larger than any car. Lengths are in millimetres: correct it."));
        } else if (!ship && car.deck().width() > WIDE) {
            found.add(Oddity.doubtful(
                    "deck",
                    "The deck of car " + car.id() + " is "
                            + Lengths.format(car.deck().width()) + " mm wide, more than 4 m. Is it right?"));
        }
        for (WheelGroup group : car.wheels()) {
            Double ratingKg = group.axleRatingKg();
            if (ratingKg != null && ratingKg > HEAVY_AXLE_KG) {
                found.add(Oddity.absurd(
                        "wheels",
                        String.format(
                                Locale.ROOT,
                                "The axle rating of %.0f kg of %s of car %s is above %.0f kg. Correct it: ratings are in"
                                        + " kg.",
                                ratingKg,
                                group.name(),
                                car.id(),
                                HEAVY_AXLE_KG)));
            }
        }
        Set<String> names = new HashSet<>();
        for (Provision anchor : car.anchors()) {
            if (!names.add(anchor.name())) {
                found.add(Oddity.absurd(
                        "anchorRows",
                        "The anchor point \"" + anchor.name() + "\" of car " + car.id()
                                + " is given twice. Rename one of the rows."));
            }
        }
        return found;
    }
}
