package org.shelterwright.layouts.transport;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Millimetres;

/**
 * A lashing: from an eye of a piece to an anchor point of the car, or from anchor to anchor over one or more pieces.
 *
 * @param key letter in tables and sketches, such as "A"
 * @param kind id of what it is
 * @param what pieces that it holds; one, if it goes to an eye
 * @param eye of the piece; {@code null} if it goes over
 * @param anchor of the car
 * @param anchor2 of the car, on the other side; {@code null} if it goes to an eye
 * @param at where it goes over, along the car (µm); {@code null}: half-way between its anchors
 */
public record Lashing(
        String key,
        String kind,
        List<String> what,
        @Nullable String eye,
        String anchor,
        @Nullable String anchor2,
        @Nullable @Millimetres Integer at) {
    public Lashing {
        what = List.copyOf(what);
        if (what.isEmpty()) {
            throw new IllegalArgumentException("The lashing \"" + key + "\" holds nothing. Name a piece.");
        }
        if ((eye == null) == (anchor2 == null)) {
            throw new IllegalArgumentException("The lashing \"" + key
                    + "\" must go either to an \"eye\" of a piece, or over to \"anchor2\". Give one of the two.");
        }
        if (eye != null && what.size() > 1) {
            throw new IllegalArgumentException(
                    "The lashing \"" + key + "\" goes to an eye and so holds one piece only.");
        }
    }

    /** A direct lashing. */
    public static Lashing direct(String key, String kind, String what, String eye, String anchor) {
        return new Lashing(key, kind, List.of(what), eye, anchor, null, null);
    }

    /** A tie-down over pieces. */
    public static Lashing over(String key, String kind, List<String> what, String anchor, String anchor2) {
        return new Lashing(key, kind, what, null, anchor, anchor2, null);
    }

    public boolean direct() {
        return eye != null;
    }
}
