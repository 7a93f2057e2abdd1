package org.shelterwright.layouts.transport.edit;

import java.util.HashSet;
import java.util.Set;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;

/** Finds the loads that edits change, and says so where there is none. */
final class Loads {
    private Loads() {}

    static Load named(Journey journey, String id) {
        return journey.load(id)
                .orElseThrow(() -> new IllegalArgumentException("There is no load \"" + id + "\" in this journey."));
    }

    /** The load, if something stands on it. */
    static Load requireUnder(Journey journey, String load, String what) {
        Load found = named(journey, load);
        if (found.stand(what).isEmpty()) {
            throw new IllegalArgumentException(
                    journey.nameOf(what) + " does not stand on " + found.name() + ". Put it there first.");
        }
        return found;
    }

    /** Whether both go on one leg at least, by themselves or inside others. */
    static boolean together(Journey journey, String one, String other) {
        return journey.legs().stream().anyMatch(leg -> {
            Set<String> goes = new HashSet<>();
            leg.loads().forEach(load -> add(journey, load, goes));
            return goes.contains(one) && goes.contains(other);
        });
    }

    private static void add(Journey journey, String id, Set<String> goes) {
        journey.load(id)
                .filter(load -> goes.add(id))
                .ifPresent(load -> load.stands().forEach(stand -> add(journey, stand.what(), goes)));
    }

    /** The load without something, and without what holds it alone; a lashing over several goes on holding the others. */
    static Load without(Load load, String what) {
        return letGo(
                load.withStands(load.stands().stream()
                        .filter(stand -> !stand.what().equals(what))
                        .toList()),
                what);
    }

    /** The load without what holds something alone; a lashing over several goes on holding the others. */
    static Load letGo(Load load, String what) {
        return load.withLashings(load.lashings().stream()
                        .flatMap(lashing -> Held.without(lashing, what).stream())
                        .toList())
                .withBlocks(load.blocks().stream()
                        .filter(block -> !block.what().equals(what))
                        .toList());
    }
}
