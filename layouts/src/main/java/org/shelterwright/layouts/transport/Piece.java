package org.shelterwright.layouts.transport;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that goes: a part of a layout, or a crate.
 *
 * @param layout where its layout comes from: "sample:NAME", or a file beside the journey; {@code null} of a crate
 * @param part which part of the layout; {@code null} of a crate
 * @param crate {@code null} of a part of a layout
 * @param destination where it is unloaded; {@code null} if at the end
 * @param apart ids of pieces that may not ride in the same car
 * @param together ids of pieces that must ride in the same car
 */
public record Piece(
        String id,
        String name,
        @Nullable String layout,
        @Nullable Part part,
        @Nullable Crate crate,
        @Nullable String destination,
        List<String> apart,
        List<String> together,
        @Nullable String note) {
    /** A part of a layout. */
    public enum Part {
        /** The carrier with the filled body on it. */
        VEHICLE,
        /** The trailer with its loads. */
        TRAILER,
        /** The filled body alone. */
        BODY
    }

    public Piece {
        apart = List.copyOf(apart);
        together = List.copyOf(together);
        if ((layout == null) == (crate == null)) {
            throw new IllegalArgumentException(
                    "The piece \"" + id + "\" must be either a part of a layout or a crate. Give one of the two.");
        }
        if ((layout == null) != (part == null)) {
            throw new IllegalArgumentException("The piece \"" + id
                    + "\" needs both \"layout\" and \"part\" (vehicle, trailer or body), or neither of them.");
        }
    }

    /** The same piece with no others to ride with or apart from. */
    public Piece alone() {
        return new Piece(id, name, layout, part, crate, null, List.of(), List.of(), note);
    }

    /** The same piece as another part of its layout. */
    public Piece as(Part other) {
        return new Piece(id, name, layout, other, crate, destination, apart, together, note);
    }

    /** A crate that may ride with anything. */
    public static Piece ofCrate(String id, String name, Crate crate) {
        return new Piece(id, name, null, null, crate, null, List.of(), List.of(), null);
    }

    /** A part of a layout. */
    public static Piece of(String id, String name, String layout, Part part) {
        return new Piece(id, name, layout, part, null, null, List.of(), List.of(), null);
    }
}
