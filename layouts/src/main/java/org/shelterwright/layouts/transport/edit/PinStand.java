package org.shelterwright.layouts.transport.edit;

import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Stand;

/**
 * Sets whether a search leaves something where it stands.
 *
 * @param load id of the load
 * @param what id of the piece or load
 */
public record PinStand(String load, String what, boolean pinned) implements JourneyEdit {
    @Override
    public String name() {
        return (pinned ? "Pin " : "Unpin ") + what;
    }

    @Override
    public Journey apply(Journey journey) {
        Load target = Loads.requireUnder(journey, load, what);
        return journey.with(target.withStands(target.stands().stream()
                .map(one -> one.what().equals(what) ? new Stand(what, one.pose(), pinned) : one)
                .toList()));
    }
}
