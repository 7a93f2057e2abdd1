package org.shelterwright.layouts.ledger.floor;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.FloorZone;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.scene.Scene;

/** A limit with a rating in each floor zone. */
abstract class ZoneLimit extends NamedLimit implements Limit.OfTotals {
    private final String ratingName;

    ZoneLimit(String id, String title, String ratingName) {
        super(
                id,
                Subject.FLOOR,
                title,
                Severity.HARD,
                Source.stated("Catalog", "ratings of the floor zones of the body"),
                "Nothing stands on a rated part of the floor.");
        this.ratingName = ratingName;
    }

    abstract @Nullable Double rating(FloorZone zone);

    /** Adds the rows of a zone whose rating is stated. */
    abstract void assess(Scene scene, FloorZone zone, double rating, Rows rows);

    @Override
    public void assess(Scene scene, Rows rows) {
        if (scene.body().floorZones().isEmpty()) {
            rows.add(rows.draft(this)
                    .notAssessed("The body " + scene.body().name() + " has no floor zones. Give floorZones in body "
                            + scene.body().id() + "."));
        }
        for (FloorZone zone : scene.body().floorZones()) {
            Double rating = rating(zone);
            if (rating == null) {
                rows.add(draft(rows, zone)
                        .notAssessed("The floor zone \"" + zone.name() + "\" has no such rating. Give " + ratingName
                                + " in body " + scene.body().id() + "."));
            } else {
                assess(scene, zone, rating, rows);
            }
        }
    }

    final RowDraft draft(Rows rows, FloorZone zone) {
        return rows.draft(this, title() + " in " + zone.name())
                .place(zone.area().at(0, 0));
    }
}
