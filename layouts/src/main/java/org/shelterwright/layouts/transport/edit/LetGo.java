package org.shelterwright.layouts.transport.edit;

import java.util.List;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;

/**
 * Takes off what holds pieces: their lashings, chocks and beams. A lashing over several goes on holding the others.
 *
 * @param load id of the load
 * @param what ids of pieces; empty: all that is on it
 */
public record LetGo(String load, List<String> what) implements JourneyEdit {
    public LetGo {
        what = List.copyOf(what);
    }

    @Override
    public String name() {
        return "Take off what holds " + (what.isEmpty() ? "all on " + load : String.join(", ", what));
    }

    @Override
    public Journey apply(Journey journey) {
        Load target = Loads.named(journey, load);
        if (what.isEmpty()) {
            return journey.with(target.withLashings(List.of()).withBlocks(List.of()));
        }
        for (String one : what) {
            target = Loads.letGo(target, one);
        }
        return journey.with(target);
    }
}
