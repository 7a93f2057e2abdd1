package org.shelterwright.app.cli.workshop;

import java.util.List;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.layouts.layout.Layout;

/**
 * A brief or layout that was named to a verb.
 *
 * @param name as it was named
 * @param layout the layout; of a brief, one in which everything is still to be placed
 * @param doubts what a person should look at
 */
public record Opened(String name, Layout layout, List<Problem> doubts) {
    public Opened {
        doubts = List.copyOf(doubts);
    }
}
