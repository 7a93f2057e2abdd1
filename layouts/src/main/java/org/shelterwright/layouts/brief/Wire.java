package org.shelterwright.layouts.brief;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;

/**
 * A cable that a brief asks for.
 *
 * @param from unit and port, such as "rack-1/power", or an entry panel, such as "body/supply entry"
 * @param to unit and port, or an entry panel
 * @param type id of its cable; {@code null} if it is to be chosen from the family
 * @param longest greatest length (µm); {@code null} if none is set
 * @param family family of cables from which the smallest that serves is chosen; {@code null} if the type is given
 * @param duty what it carries; {@code null}: what is known of the units at its ends
 * @param panel entry panel by which it leaves the body, where an end is outside; {@code null}: the one that makes it shortest
 * @param outside length outside the body, to the trailer (µm); {@code null} if not known
 * @param bus wires of one bus may join each other on the way, as earthing does; {@code null} if it goes by itself
 */
public record Wire(
        String id,
        String from,
        String to,
        @Nullable String type,
        @Nullable @Millimetres Integer longest,
        @Nullable String family,
        @Nullable Duty duty,
        @Nullable String panel,
        @Nullable @Millimetres Integer outside,
        @Nullable String bus) {
    public Wire {
        if (from.equals(to)) {
            throw new IllegalArgumentException("The wire \"" + id + "\" goes from " + from
                    + " to itself. Give the port that it goes to as \"to\".");
        }
        if ((type == null) == (family == null)) {
            throw new IllegalArgumentException("The wire \"" + id + "\" must name "
                    + (type == null
                            ? "its cable as \"type\", or a \"family\" to choose from."
                            : "either its \"type\" or a \"family\" to choose from, not both."));
        }
        require(id, "greatest length", longest);
        require(id, "length outside", outside);
    }

    /** A wire of a given type of which nothing more is said. */
    public Wire(String id, String from, String to, String type, @Nullable @Millimetres Integer longest) {
        this(id, from, to, type, longest, null, null, null, null, null);
    }

    private static void require(String id, String what, @Nullable Integer length) {
        if (length != null && length <= 0) {
            throw new IllegalArgumentException("The " + what + " of wire \"" + id + "\" must be above zero, but is "
                    + Lengths.format(length) + " mm.");
        }
    }
}
