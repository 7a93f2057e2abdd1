package org.shelterwright.app.cli.workshop;

import java.util.List;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.layout.Layout;

/**
 * A brief or layout that was named to a verb.
 *
 * @param name as it was named
 * @param layout the layout; of a brief, one in which everything is still to be placed
 * @param fingerprint what its file held; {@link Fingerprint#NONE} if this is no layout that stands in a file of its own
 * @param doubts what a person should look at
 */
public record Opened(String name, Layout layout, Fingerprint fingerprint, List<Problem> doubts) {
    public Opened {
        doubts = List.copyOf(doubts);
    }
}
