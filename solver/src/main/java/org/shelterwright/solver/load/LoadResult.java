package org.shelterwright.solver.load;

import java.time.Duration;
import java.util.List;
import org.shelterwright.solver.load.model.Load;

/**
 * What a search for a load found.
 *
 * @param load the best load
 * @param share volume of its pieces over that of the room
 * @param faults what a check from scratch finds broken: empty unless practice asks for what was not found
 * @param moves spaces looked at by all lanes
 */
public record LoadResult(Load load, double share, List<String> faults, long moves, Duration elapsed) {
    public LoadResult {
        faults = List.copyOf(faults);
    }
}
