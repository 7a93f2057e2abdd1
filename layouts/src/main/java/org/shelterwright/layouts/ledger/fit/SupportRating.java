package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * What stands on or hangs under a support weighs no more than its rating: sum of the masses of its guests, with growth,
 * uncertainty and full tanks, and all that they carry in turn &lt;= rating (kg). The heavier of both situations governs. A guest counts on the
 * support that suits it best.
 *
 * <p>Source: the support ratings and stacking strengths of the items in the catalog.
 */
final class SupportRating extends NamedLimit implements Limit.OfTotals {
    SupportRating() {
        super(
                "fit.support-rating",
                Subject.FIT,
                "Load on supports",
                Severity.HARD,
                Source.stated("Catalog", "support ratings and stacking strengths of the items"),
                "No unit stands on or hangs under a support of another.");
    }

    private record Load(Rest rest, List<PlacedUnit> guests, double nominalKg, double worstKg, List<String> missing) {
        Load with(PlacedUnit guest, CarriedMass mass) {
            List<PlacedUnit> more = new ArrayList<>(guests);
            more.add(guest);
            List<String> unknown = new ArrayList<>(missing);
            unknown.addAll(mass.missing());
            return new Load(rest, more, nominalKg + mass.nominalKg(), worstKg + mass.worstKg(), unknown);
        }
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Map<String, Load> station = loads(scene, Situation.ON_STATION);
        Map<String, Load> road = loads(scene, Situation.ON_THE_ROAD);
        road.forEach((support, load) -> {
            Load other = station.remove(support);
            boolean same = other != null && other.worstKg() == load.worstKg();
            boolean stationGoverns = other != null && other.worstKg() > load.worstKg();
            String state =
                    same ? "always" : Wording.situation(stationGoverns ? Situation.ON_STATION : Situation.ON_THE_ROAD);
            rows.add(row(rows, stationGoverns && other != null ? other : load, state));
        });
        station.values().forEach(load -> rows.add(row(rows, load, Wording.situation(Situation.ON_STATION))));
    }

    private static Map<String, Load> loads(Scene scene, Situation situation) {
        Map<String, Load> loads = new LinkedHashMap<>();
        MassModel model = new MassModel(scene.rules());
        for (PlacedUnit guest : scene.units()) {
            if (guest.place(situation).host() != null) {
                Rest.of(scene, guest, situation).ifPresent(rest -> {
                    String key =
                            rest.support().host().id() + "/" + rest.support().name();
                    Load load = loads.getOrDefault(key, new Load(rest, List.of(), 0, 0, List.of()));
                    loads.put(key, load.with(guest, CarriedMass.of(scene, model, guest, situation)));
                });
            }
        }
        return loads;
    }

    private Row row(Rows rows, Load load, String state) {
        PlacedSupport support = load.rest().support();
        String name = "\"" + support.name() + "\" of " + support.host().name();
        RowDraft draft = rows.draft(
                        this,
                        "Load on " + support.name() + " of " + support.host().name())
                .units(support.host())
                .units(load.guests().stream().map(PlacedUnit::id).toList())
                .place(support.box())
                .state(state);
        Double ratingKg = support.ratingKg();
        if (ratingKg == null) {
            return draft.mend("State the rating of the support in item "
                            + support.host().item().id() + ".")
                    .notAssessed("The rating of the support " + name + " is not stated.");
        }
        if (!load.missing().isEmpty()) {
            return Unstated.row(draft, load.missing());
        }
        if (load.worstKg() > ratingKg) {
            draft.mend("Put something lighter on it, or choose a stronger support.");
        }
        return draft.nominal(load.nominalKg())
                .atMost(
                        load.worstKg(),
                        ratingKg,
                        "kg",
                        "The support " + name + " carries "
                                + Wording.list(load.guests().stream()
                                        .map(PlacedUnit::name)
                                        .toList()) + ".");
    }
}
