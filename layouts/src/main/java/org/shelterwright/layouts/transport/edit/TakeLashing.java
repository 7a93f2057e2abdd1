package org.shelterwright.layouts.transport.edit;

import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;

/**
 * Takes one lashing off.
 *
 * @param load id of the load
 * @param key of the lashing
 */
public record TakeLashing(String load, String key) implements JourneyEdit {
    @Override
    public String name() {
        return "Take lashing " + key + " off";
    }

    @Override
    public Journey apply(Journey journey) {
        Load target = Loads.named(journey, load);
        if (target.lashings().stream().noneMatch(one -> one.key().equals(key))) {
            throw new IllegalArgumentException("There is no lashing " + key + " on " + target.name() + ".");
        }
        return journey.with(target.withLashings(
                target.lashings().stream().filter(one -> !one.key().equals(key)).toList()));
    }
}
