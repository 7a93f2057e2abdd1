package org.shelterwright.layouts.ledger.floor;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.FloorZone;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mass.GapRow;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * A limit of single patches. A patch counts whole in every zone that it touches. Each zone has a row for the patch that uses most
 * of the rating, and one for each further unit that breaks it.
 */
abstract class PatchLimit extends ZoneLimit {
    private final String unit;
    private final String verb;

    PatchLimit(String id, String title, String ratingName, String unit, String verb) {
        super(id, title, ratingName);
        this.unit = unit;
        this.verb = verb;
    }

    /** The demand of a patch that bears a mass on an area. */
    abstract double demand(double massKg, double areaM2);

    /** The worst patch of one unit in a zone. */
    private record Worst(FloorSituation situation, int patch, double demand) {
        PlacedUnit unit() {
            return situation.low().units()[patch];
        }
    }

    @Override
    void assess(Scene scene, FloorZone zone, double rating, Rows rows) {
        FloorLoads loads = FloorLoads.of(scene);
        Worst[] ofUnits = new Worst[scene.units().size()];
        for (FloorSituation situation : loads.situations()) {
            FloorCase low = situation.low();
            for (int k = 0; k < low.patches(); k++) {
                if (!low.people()[k] && touches(zone.area(), low, k)) {
                    double demand = demand(situation.most(k) + low.off()[k], low.area(k));
                    int index = low.units()[k].index();
                    if (ofUnits[index] == null || demand > ofUnits[index].demand()) {
                        ofUnits[index] = new Worst(situation, k, demand);
                    }
                }
            }
        }
        Worst worst = null;
        List<Worst> shown = new ArrayList<>();
        for (Worst one : ofUnits) {
            if (one != null) {
                worst = worst == null || one.demand() > worst.demand() ? one : worst;
                if (one.demand() > rating) {
                    shown.add(one);
                }
            }
        }
        if (shown.isEmpty() && !loads.gaps().isEmpty()) {
            rows.add(GapRow.of(draft(rows, zone), loads.gaps()));
        } else if (shown.isEmpty() && worst != null) {
            shown.add(worst);
        }
        shown.forEach(one -> rows.add(row(draft(rows, zone), zone, one, rating)));
    }

    private Row row(RowDraft draft, FloorZone zone, Worst one, double rating) {
        int k = one.patch();
        FloorCase load = one.situation().most(patch -> patch == k ? 1 : 0);
        Rect area = new Rect(load.x0()[k], load.y0()[k], load.x1()[k], load.y1()[k]);
        double nominal = demand(load.nominal()[k], load.area(k));
        draft.units(one.unit()).place(area.at(0, 0)).state(load.state()).nominal(nominal);
        if (one.demand() > rating) {
            draft.mend("Put a larger plate under " + one.unit().name() + ", or lighten it.");
        }
        return draft.atMost(
                one.demand(),
                rating,
                unit,
                one.unit().name() + " " + verb + " " + Amounts.number(one.demand(), 1) + " " + unit
                        + " under a patch of "
                        + Amounts.number(1e4 * load.area(k), 0) + " cm²; " + zone.name() + " bears "
                        + Amounts.number(rating, 1) + " " + unit + ".");
    }

    private static boolean touches(Rect zone, FloorCase load, int k) {
        return load.x0()[k] < zone.x1()
                && zone.x0() < load.x1()[k]
                && load.y0()[k] < zone.y1()
                && zone.y0() < load.y1()[k];
    }

    @Override
    abstract @Nullable Double rating(FloorZone zone);
}
