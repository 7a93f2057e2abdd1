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
 * Both ends of a wagon bear alike enough: bogies at most 3 : 1, single axles at most 2 : 1, the empty wagon counted. Source: UIC Loading
 * Guidelines, volume 1, 3.3 (from memory).
 */
final class GroupRatio extends WagonLimit {
    GroupRatio() {
        super(
                "end-ratio",
                "Bogie or axle ratio",
                Source.fromMemory("UIC Loading Guidelines, volume 1", "3.3: bogies 3 : 1, axles 2 : 1"));
    }

    @Override
    Row row(LegScene leg, PlacedLoad load, CarStatics statics, RowDraft draft) {
        boolean bogies = statics.groups().get(0).group().axles() > 1;
        Figure figure = bogies ? Figure.BOGIE_RATIO : Figure.WAGON_AXLE_RATIO;
        Rule rule = leg.rules().rule(figure).orElse(null);
        if (rule == null) {
            return unset(draft, figure);
        }
        GroupLoad rear = statics.groups().get(0);
        GroupLoad front = statics.groups().get(1);
        double ratio = Math.min(statics.ratio(), 999);
        String heavy =
                rear.kg() >= front.kg() ? rear.group().name() : front.group().name();
        return draft.source(rule.source())
                .mend(
                        ratio > rule.value()
                                ? "Move the load " + (rear.kg() > front.kg() ? "forward" : "rearward") + ", off "
                                        + heavy + "."
                                : null)
                .atMost(
                        ratio,
                        rule.value(),
                        ": 1",
                        rear.group().name() + " bears " + Amounts.kg(rear.kg()) + ", "
                                + front.group().name() + " " + Amounts.kg(front.kg()) + ".");
    }
}
