package org.shelterwright.layouts.ledger.transport.place;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.CarChoice;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * What stands on a car is no longer than its deck: {@code x1 − x0 + tolerance <= length}, from the rear end of the rearmost to the
 * front end of the foremost. The tolerance is that of vehicles against their data. Source: the sheet of the car; tolerance of
 * 100 mm from an allied agreement on loading studies (seen).
 */
final class DeckSpace extends LegLimit {
    DeckSpace() {
        super(
                "deck-length",
                "Length on the deck",
                Source.commonPractice("loads end within the deck; vehicles may be longer than their data say"),
                "No load goes on this leg.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            Box hull = load.hull().orElse(null);
            if (hull == null) {
                continue;
            }
            boolean wheeled =
                    load.pieces().stream().anyMatch(piece -> piece.shape().wheeled());
            double tolerance = wheeled ? leg.rules().valueOr(Figure.LENGTH_TOLERANCE, 0) : 0;
            double lengthM = Lengths.metres(hull.x1() - hull.x0()) + tolerance / 1000;
            double deckM = Lengths.metres(load.car().deck().length());
            rows.add(draft(leg, rows, "Length on " + load.name())
                    .units(load.ids())
                    .place(hull)
                    .mend(lengthM > deckM ? CarChoice.mend(leg, load).orElse("Take something off this car.") : null)
                    .source(load.car().source())
                    .atMost(
                            lengthM,
                            deckM,
                            "m",
                            "The load of " + load.name() + " is " + Lengths.format(hull.x1() - hull.x0())
                                    + " mm long"
                                    + (tolerance > 0 ? " and may be " + (int) tolerance + " mm longer" : "")
                                    + "; the deck of the " + load.car().name() + " is "
                                    + Wording.mm(load.car().deck().length()) + " long."));
        }
    }
}
