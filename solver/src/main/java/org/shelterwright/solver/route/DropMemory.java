package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.drop.Drop;
import org.shelterwright.solver.route.drop.DropSearch;
import org.shelterwright.solver.route.drop.Target;

/**
 * Runs outside trays by question, with the part of the room that each answer depends on and the units that reach into it: as long
 * as those are the very same, so is the answer. Of a question the last few answers are kept, so that one who tries a unit here
 * and there and puts it back finds what was known of its old place. Safe for several threads.
 */
final class DropMemory {
    /** Where more is kept, all is forgotten. */
    private static final int MOST = 10_000;

    private static final int MOST_OF_ONE = 8;

    private final Map<Question, List<Answer>> answers = new ConcurrentHashMap<>();

    /** What a run is asked for. */
    record Question(Point start, Target target, int radius, List<Box> shunned) {}

    /** @param limit what was asked for at most */
    private record Answer(DropSearch.Found found, long limit, List<PlacedUnit> near) {
        /** What it says for another limit: as a search within that would; {@code null} if it does not say. */
        @Nullable
        Optional<Drop> within(long other) {
            Drop drop = found.drop().orElse(null);
            if (drop == null) {
                return other <= limit ? Optional.empty() : null;
            }
            boolean asFar = other >= DropSearch.ANY_COST || !found.farther();
            return asFar && drop.cost() <= other ? found.drop() : Optional.empty();
        }
    }

    /** The answer of before; {@code null} if there is none or something has changed where it matters. */
    @Nullable
    Optional<Drop> known(Question question, long limit, Scene scene) {
        List<Answer> all = answers.getOrDefault(question, List.of());
        for (Answer answer : all) {
            Optional<Drop> drop = unchanged(answer, scene) ? answer.within(limit) : null;
            if (drop != null) {
                if (answer != all.get(0)) {
                    putFirst(question, answer);
                }
                return drop;
            }
        }
        return null;
    }

    void keep(Question question, long limit, DropSearch.Found found, Scene scene) {
        if (answers.size() >= MOST) {
            answers.clear();
        }
        List<PlacedUnit> near = new ArrayList<>();
        for (PlacedUnit unit : scene.units()) {
            if (reaches(unit, found.region())) {
                near.add(unit);
            }
        }
        putFirst(question, new Answer(found, limit, near));
    }

    private void putFirst(Question question, Answer answer) {
        answers.merge(question, List.of(answer), (old, one) -> {
            List<Answer> all = new ArrayList<>(one);
            old.stream().filter(other -> other != answer).limit(MOST_OF_ONE - 1).forEach(all::add);
            return all;
        });
    }

    private static boolean unchanged(Answer answer, Scene scene) {
        int next = 0;
        for (PlacedUnit unit : scene.units()) {
            boolean expected = next < answer.near().size() && answer.near().get(next) == unit;
            if (expected) {
                next++;
            } else if (reaches(unit, answer.found().region())) {
                return false;
            }
        }
        return next == answer.near().size();
    }

    private static boolean reaches(PlacedUnit unit, Box region) {
        return unit.reach(Situation.ON_STATION).touches(region)
                || unit.reach(Situation.ON_THE_ROAD).touches(region);
    }
}
