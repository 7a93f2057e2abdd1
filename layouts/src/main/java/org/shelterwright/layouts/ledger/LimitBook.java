package org.shelterwright.layouts.ledger;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The limits that are checked, in the order of their subjects. */
public record LimitBook(List<Limit> limits) {
    public LimitBook {
        limits = List.copyOf(limits);
        Set<String> ids = new HashSet<>();
        for (Limit limit : limits) {
            if (!ids.add(limit.id())) {
                throw new IllegalArgumentException("The limit id \"" + limit.id() + "\" is used twice.");
            }
        }
    }

    /** Those limits on which it bears where units stand. */
    public LimitBook ofPlaces() {
        return new LimitBook(limits.stream()
                .filter(limit -> !(limit instanceof Limit.OfBrief))
                .toList());
    }

    public Optional<Limit> limit(String id) {
        return limits.stream().filter(limit -> limit.id().equals(id)).findFirst();
    }
}
