package org.shelterwright.layouts.ledger.transport.burden;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.transport.scene.CarStatics;
import org.shelterwright.layouts.transport.scene.CarStatics.GroupLoad;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * Left and right wheels of a wagon bear alike enough: at most 1.25 : 1, the empty wagon counted. Source: UIC Loading Guidelines, volume
 * 1, 3.3 (from memory).
 */
final class SideRatio extends WagonLimit {
    SideRatio() {
        super(
                "wheel-ratio",
                "Wheel ratio, left to right",
                Source.fromMemory("UIC Loading Guidelines, volume 1", "3.3: wheels of one axle 1.25 : 1"));
    }

    @Override
    Row row(LegScene leg, PlacedLoad load, CarStatics statics, RowDraft draft) {
        Rule rule = leg.rules().rule(Figure.WHEEL_RATIO).orElse(null);
        if (rule == null) {
            return unset(draft, Figure.WHEEL_RATIO);
        }
        GroupLoad worst =
                statics.groups().get(0).sideRatio() >= statics.groups().get(1).sideRatio()
                        ? statics.groups().get(0)
                        : statics.groups().get(1);
        double ratio = Math.min(worst.sideRatio(), 999);
        return draft.source(rule.source())
                .mend(
                        ratio > rule.value()
                                ? "Move the load to the " + (worst.leftKg() > worst.rightKg() ? "right" : "left") + "."
                                : null)
                .atMost(
                        ratio,
                        rule.value(),
                        ": 1",
                        "On " + worst.group().name() + " the left wheels bear " + Amounts.kg(worst.leftKg())
                                + " and the right ones " + Amounts.kg(worst.rightKg()) + ".");
    }
}
