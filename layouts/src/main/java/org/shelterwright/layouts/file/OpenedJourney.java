package org.shelterwright.layouts.file;

import java.util.List;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.scene.JourneyParts;

/**
 * A journey read from a file.
 *
 * @param parts what it refers to
 * @param fingerprint what the file held, for saving under the same name
 * @param doubts what a person should look at
 */
public record OpenedJourney(Journey journey, JourneyParts parts, Fingerprint fingerprint, List<Problem> doubts) {
    public OpenedJourney {
        doubts = List.copyOf(doubts);
    }
}
