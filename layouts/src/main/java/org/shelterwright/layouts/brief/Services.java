package org.shelterwright.layouts.brief;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of power and air: the states in which the shelter works, the supplies, and which unit draws from which.
 *
 * @param altitudeM greatest height above the sea at which it works (m); {@code null} if not stated
 * @param feeds one for a unit at most; a unit without one draws from the only supply that fits it
 * @param apart pairs of units that must not share a supply
 */
public record Services(
        @Nullable Double altitudeM,
        List<OperatingState> states,
        List<Supply> supplies,
        List<Feed> feeds,
        List<SupplyPair> apart) {
    public Services {
        states = List.copyOf(states);
        supplies = List.copyOf(supplies);
        feeds = List.copyOf(feeds);
        apart = List.copyOf(apart);
        requireUnique("state", states.stream().map(OperatingState::id).toList());
        requireUnique("supply", supplies.stream().map(Supply::id).toList());
        requireUnique("feed of unit", feeds.stream().map(Feed::unit).toList());
        requireNoCircle(supplies);
    }

    public Optional<Supply> supply(String id) {
        return supplies.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public Optional<Feed> feed(String unit) {
        return feeds.stream().filter(one -> one.unit().equals(unit)).findFirst();
    }

    /** The same without a unit that is gone; a supply that came from it stays and lacks its source. */
    public Services without(String unit) {
        return new Services(
                altitudeM,
                states,
                supplies.stream().map(supply -> supply.without(unit)).toList(),
                feeds.stream().filter(feed -> !feed.unit().equals(unit)).toList(),
                apart.stream().filter(pair -> !pair.names(unit)).toList());
    }

    private static void requireNoCircle(List<Supply> supplies) {
        Set<String> settled = new HashSet<>();
        Set<String> known = supplies.stream().map(Supply::id).collect(Collectors.toSet());
        boolean more = true;
        while (more) {
            more = false;
            for (Supply supply : supplies) {
                boolean free = supply.fedFrom().stream().allMatch(id -> settled.contains(id) || !known.contains(id));
                more |= free && settled.add(supply.id());
            }
        }
        known.removeAll(settled);
        if (!known.isEmpty()) {
            throw new IllegalArgumentException("The supplies " + String.join(", ", new TreeSet<>(known))
                    + " feed each other in a circle. Give one of them another source.");
        }
    }

    private static void requireUnique(String kind, List<String> ids) {
        Set<String> seen = new HashSet<>();
        for (String id : ids) {
            if (!seen.add(id)) {
                throw new IllegalArgumentException(
                        "The " + kind + " \"" + id + "\" is given twice. Remove or rename one of them.");
            }
        }
    }
}
