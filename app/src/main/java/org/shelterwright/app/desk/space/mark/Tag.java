package org.shelterwright.app.desk.space.mark;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.layouts.ledger.Verdict;

/**
 * A few words beside a place, joined to it by a leader.
 *
 * @param place what it speaks of, on the pane
 * @param lines the words
 * @param verdict whose sign and colour it bears; {@code null}: it speaks of what the person does
 * @param filled on a filled ground: what caught
 * @param shorter what is said instead where there is no room for it; {@code null}: nothing
 */
record Tag(
        Spot place,
        List<String> lines,
        @Nullable Verdict verdict,
        boolean filled,
        @Nullable Tag shorter) {
    Tag {
        lines = List.copyOf(lines);
    }

    static Tag doing(Spot place, String words) {
        return new Tag(place, List.of(words), null, false, null);
    }

    static Tag caught(Spot place, String words) {
        return new Tag(place, List.of(words), null, true, null);
    }

    static Tag finding(Spot place, List<String> lines, Verdict verdict, @Nullable Tag shorter) {
        return new Tag(place, lines, verdict, false, shorter);
    }
}
