package org.shelterwright.layouts.transport.edit;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Load;

/**
 * Adds a lashing.
 *
 * @param load id of the load
 */
public record AddLashing(String load, Lashing lashing) implements JourneyEdit {
    @Override
    public String name() {
        return "Lash " + String.join(", ", lashing.what()) + " (" + lashing.key() + ")";
    }

    @Override
    public Journey apply(Journey journey) {
        Load target = Loads.named(journey, load);
        for (String what : lashing.what()) {
            Loads.requireUnder(journey, load, what);
        }
        if (target.lashings().stream().anyMatch(one -> one.key().equals(lashing.key()))) {
            throw new IllegalArgumentException("There is a lashing " + lashing.key() + " on " + target.name()
                    + " already. Give this one another key.");
        }
        List<Lashing> lashings = new ArrayList<>(target.lashings());
        lashings.add(lashing);
        return journey.with(target.withLashings(lashings));
    }
}
