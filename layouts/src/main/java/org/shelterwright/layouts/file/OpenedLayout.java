package org.shelterwright.layouts.file;

import java.util.List;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.layouts.layout.Layout;

/**
 * A layout read from a file.
 *
 * @param fingerprint what the file held, for saving under the same name
 * @param doubts what a person should look at, such as a copy of a catalog entry that was changed by hand
 */
public record OpenedLayout(Layout layout, Fingerprint fingerprint, List<Problem> doubts) {
    public OpenedLayout {
        doubts = List.copyOf(doubts);
    }
}
