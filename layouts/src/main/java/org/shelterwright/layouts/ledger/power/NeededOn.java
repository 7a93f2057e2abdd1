package org.shelterwright.layouts.ledger.power;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.Feed;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.power.Draw;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.scene.Scene;

/**
 * A unit that the brief needs in a state is on in it: its supply is live, and it is neither idle nor off.
 *
 * <p>Source: the brief.
 */
final class NeededOn extends PowerLimit {
    NeededOn() {
        super(
                "power.needed",
                "Units that must be on",
                Severity.MEDIUM,
                Source.stated("Brief", "states in which a unit is needed"),
                "The brief says of no unit that it must be on.");
    }

    @Override
    void assess(Scene scene, PowerNet net, Rows rows) {
        int held = 0;
        int broken = 0;
        for (Feed feed : net.services().feeds()) {
            for (StateFlow state : net.flows()) {
                if (feed.needed().contains(state.state().id())) {
                    boolean on = state.draw(feed.unit()).map(Draw::on).orElse(false);
                    held += on ? 1 : 0;
                    broken += on ? 0 : 1;
                    if (!on) {
                        rows.add(rows.draft(this)
                                .units(units(feed.unit()))
                                .state(state.state().name())
                                .mend("Feed it from a supply that is live in that state, and state it neither idle nor"
                                        + " off there.")
                                .atMost(
                                        1,
                                        0,
                                        "",
                                        "The unit " + feed.unit() + " must be on "
                                                + state.state().name() + ", and is not."));
                    }
                }
            }
        }
        if (broken == 0 && held > 0) {
            rows.add(rows.draft(this)
                    .held("Every unit is on in the states in which it is needed (" + Wording.count(held, "case")
                            + ")."));
        }
    }
}
