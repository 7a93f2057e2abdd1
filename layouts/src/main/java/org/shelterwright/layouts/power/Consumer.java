package org.shelterwright.layouts.power;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.layouts.brief.Feed;
import org.shelterwright.layouts.brief.OperatingState;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.UnitSpec;

/**
 * A unit that draws power.
 *
 * @param power what it draws; {@code null} if that is not known
 * @param inside whether its heat goes into the room
 * @param supply what it draws from; {@code null} if that is not known
 * @param feed what the brief says of it; {@code null} if nothing
 * @param mayBe ids of the supplies that it may draw from
 * @param gap why its supply or power is not known; {@code null} if both are
 */
public record Consumer(
        UnitSpec unit,
        @Nullable Power power,
        boolean inside,
        @Nullable Supply supply,
        @Nullable Feed feed,
        List<String> mayBe,
        @Nullable PowerGap gap) {
    public Consumer {
        mayBe = List.copyOf(mayBe);
    }

    /** How a unit is used. */
    public enum Use {
        ON,
        IDLE,
        OFF
    }

    /** Its use in a state whose supply is live: on, unless the brief says otherwise. */
    public Use use(OperatingState state) {
        if (feed != null && feed.off().contains(state.id())) {
            return Use.OFF;
        }
        return feed != null && feed.idle().contains(state.id()) ? Use.IDLE : Use.ON;
    }
}
