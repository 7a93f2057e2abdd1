package org.shelterwright.app.desk.ledger;

import java.util.List;

/**
 * How a ledger column and its commands are named.
 *
 * @param prefix how the ids of its commands begin, with a point at the end
 * @param of what the ledger and its findings are of, after both words in the names of commands, such as " of the journey"; empty for
 *     the layout
 * @param list id of the list
 * @param whole what a row without a place concerns, such as "the whole layout"
 * @param keyed whether the commands have keys of their own
 */
public record Naming(String prefix, String of, String list, String whole, boolean keyed) {
    public static final Naming OF_LAYOUT = new Naming("ledger.", "", "ledger-list", "the whole layout", true);

    String ledger() {
        return "ledger" + of;
    }

    String finding() {
        return "finding" + of;
    }

    List<String> keys(String key) {
        return key.isEmpty() || !keyed ? List.of() : List.of(key);
    }
}
