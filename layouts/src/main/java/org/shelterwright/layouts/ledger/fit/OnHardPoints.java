package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.GoverningCase;
import org.shelterwright.layouts.ledger.mend.Shift;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every fixing of a unit lands exactly on a hard point of the surface that it goes into, of its thread; one that goes
 * into another unit lands on the support of it. Demand: number of fixings that land on none, of 0. An item that is
 * neither loose nor states a fixing for the way it is mounted is not assessed.
 *
 * <p>Source: common practice.
 */
final class OnHardPoints extends NamedLimit implements Limit.OfUnit {
    OnHardPoints() {
        super(
                "fit.hard-point",
                Subject.FIT,
                "Fixings on hard points",
                Severity.HARD,
                Source.commonPractice("A bolt goes where the body is made for it"),
                "Every fixing lands on a hard point.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        if (statesNone(unit)) {
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(unit.outline(Situation.ON_THE_ROAD))
                    .mend("State the fixings of item " + unit.item().id() + ", or state that it is loose.")
                    .notAssessed(unit.name() + " is not loose, but its item states no fixing "
                            + "for the way in which it is mounted."));
            return;
        }
        Landing landing = new Landing(scene.body().hardPoints());
        GoverningCase worst = GoverningCase.of(
                situation -> missing(scene, landing, unit, situation).size());
        if (worst.amount() > 0) {
            List<PlacedFixing> missing = missing(scene, landing, unit, worst.situation());
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(unit.outline(worst.situation()))
                    .state(worst.state())
                    .mend(mend(landing, unit, worst.situation()))
                    .atMost(worst.amount(), 0, "fixings", finding(landing, unit, missing)));
        }
    }

    private static boolean statesNone(PlacedUnit unit) {
        return !unit.item().mounting().loose()
                && PlacedFixing.of(unit, Situation.ON_THE_ROAD).isEmpty();
    }

    private static List<PlacedFixing> missing(Scene scene, Landing landing, PlacedUnit unit, Situation situation) {
        List<PlacedFixing> missing = new ArrayList<>();
        Optional<Rest> rest = Rest.of(scene, unit, situation);
        for (PlacedFixing fixing : PlacedFixing.of(unit, situation)) {
            boolean lands = fixing.intoHost()
                    ? rest.filter(found ->
                                    found.gap() == 0 && found.support().box().contains(fixing.at()))
                            .isPresent()
                    : landing.under(fixing) != null;
            if (!lands) {
                missing.add(fixing);
            }
        }
        return missing;
    }

    private static String finding(Landing landing, PlacedUnit unit, List<PlacedFixing> missing) {
        PlacedFixing first = missing.get(0);
        String names = Wording.list(
                missing.stream().map(fixing -> fixing.fixing().name()).toList());
        String text = Wording.count(missing.size(), "fixing") + " of " + unit.name() + " (" + names + ") "
                + (missing.size() == 1 ? "lands" : "land");
        if (first.intoHost()) {
            return text + " beside the support that carries it.";
        }
        String where = text + " on no hard point of " + Wording.surface(first.face());
        return landing.nearest(first)
                .map(shift ->
                        where + ": the nearest for " + first.fixing().name() + " lies " + Shift.words(shift) + ".")
                .orElse(where + ", and none for " + first.fixing().thread() + " is near "
                        + first.fixing().name() + ".");
    }

    private static String mend(Landing landing, PlacedUnit unit, Situation situation) {
        List<PlacedFixing> all = PlacedFixing.of(unit, situation).stream()
                .filter(fixing -> !fixing.intoHost())
                .toList();
        return Optional.of(all)
                .filter(fixings -> !fixings.isEmpty())
                .flatMap(landing::shiftForAll)
                .map(shift -> "Move " + unit.name() + " " + Shift.words(shift) + ": then every fixing lands.")
                .orElse("Find another place or turn for " + unit.name() + ", or add hard points.");
    }
}
