package org.shelterwright.layouts.transport.edit;

import java.util.List;
import java.util.Optional;
import org.shelterwright.layouts.transport.Lashing;

/** What a lashing holds, after something was let go. */
final class Held {
    private Held() {}

    /** The lashing without one of the pieces that it goes over; empty if it holds nothing else. */
    static Optional<Lashing> without(Lashing lashing, String what) {
        if (!lashing.what().contains(what)) {
            return Optional.of(lashing);
        }
        List<String> others =
                lashing.what().stream().filter(one -> !one.equals(what)).toList();
        return others.isEmpty()
                ? Optional.empty()
                : Optional.of(new Lashing(
                        lashing.key(),
                        lashing.kind(),
                        others,
                        lashing.eye(),
                        lashing.anchor(),
                        lashing.anchor2(),
                        lashing.at()));
    }
}
