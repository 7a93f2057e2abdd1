package org.shelterwright.layouts.ledger.fit;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.GoverningCase;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * A unit on or under another touches a support of it with all its prints within the support: max(|gap|, length beyond)
 * = 0 on the support that suits best. The host must be placed and must not rest on the unit itself in turn.
 *
 * <p>Source: common practice.
 */
final class RestsOnSupport extends NamedLimit implements Limit.OfUnit {
    private static final int NO_REST = Integer.MAX_VALUE;

    RestsOnSupport() {
        super(
                "fit.support",
                Subject.FIT,
                "Rest on a support",
                Severity.HARD,
                Source.commonPractice("A unit rests with its whole foot on what carries it"),
                "Every unit on or under another rests on a support of it.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        GoverningCase worst = GoverningCase.of(situation -> amiss(scene, unit, situation));
        if (worst.amount() == 0) {
            return;
        }
        Situation situation = worst.situation();
        String host = hostName(scene, unit.place(situation).host());
        RowDraft draft =
                rows.draft(this).units(unit).place(unit.outline(situation)).state(worst.state());
        Optional<Rest> rest = Rest.of(scene, unit, situation);
        if (worst.amount() == NO_REST || rest.isEmpty()) {
            rows.add(draft.mend("Mount it on something else.").atMost(1, 0, "", noRest(scene, unit, situation, host)));
        } else {
            rows.add(draft.mend(mend(unit, rest.get()))
                    .atMost(worst.amount() / 1e3, 0, "mm", finding(unit, host, rest.get())));
        }
    }

    private static int amiss(Scene scene, PlacedUnit unit, Situation situation) {
        if (unit.place(situation).host() == null) {
            return 0;
        }
        if (circular(scene, unit, situation)) {
            return NO_REST;
        }
        return Rest.of(scene, unit, situation).map(Rest::amiss).orElse(NO_REST);
    }

    private static boolean circular(Scene scene, PlacedUnit unit, Situation situation) {
        Set<String> seen = new HashSet<>();
        String id = unit.id();
        while (id != null) {
            if (!seen.add(id)) {
                return true;
            }
            Optional<PlacedUnit> next = scene.unit(id);
            id = next.map(found -> found.place(situation)).map(Place::host).orElse(null);
        }
        return false;
    }

    private static String noRest(Scene scene, PlacedUnit unit, Situation situation, String host) {
        if (circular(scene, unit, situation)) {
            return unit.name() + " is mounted on " + host + ", which in the end is mounted on it.";
        }
        if (unit.place(situation).host() != null
                && scene.unit(String.valueOf(unit.place(situation).host())).isEmpty()) {
            return unit.name() + " is mounted on " + host + ", which has no place yet.";
        }
        boolean under = unit.place(situation).surface() == Surface.UNDER_UNIT;
        return unit.name() + " is mounted " + (under ? "under " : "on ") + host + ", which has no support "
                + (under ? "on its underside." : "on its top.");
    }

    private static String finding(PlacedUnit unit, String host, Rest rest) {
        String support = "the support \"" + rest.support().name() + "\" of " + host;
        if (rest.beyond() >= Math.abs(rest.gap())) {
            return unit.name() + " reaches " + Wording.mm(rest.beyond()) + " beyond " + support + ".";
        }
        return unit.name() + " lies " + Wording.mm(Math.abs(rest.gap())) + (rest.gap() > 0 ? " off " : " into ")
                + support + ".";
    }

    private static String mend(PlacedUnit unit, Rest rest) {
        return "Put " + unit.name() + " at " + Wording.mm(rest.support().level()) + " above the floor, within x "
                + Wording.mm(rest.support().area().x0()) + " to "
                + Wording.mm(rest.support().area().x1()) + " and y "
                + Wording.mm(rest.support().area().y0()) + " to "
                + Wording.mm(rest.support().area().y1()) + ".";
    }

    private static String hostName(Scene scene, @Nullable String host) {
        return host == null ? "nothing" : scene.unit(host).map(PlacedUnit::name).orElse("\"" + host + "\"");
    }
}
