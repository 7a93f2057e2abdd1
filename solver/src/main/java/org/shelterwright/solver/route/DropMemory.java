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
 * as those are the very same, so is the answer. Safe for several threads.
 */
final class DropMemory {
    /** Where more is kept, all is forgotten. */
    private static final int MOST = 50_000;

    private final Map<Question, Answer> answers = new ConcurrentHashMap<>();

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
        Answer answer = answers.get(question);
        return answer != null && unchanged(answer, scene) ? answer.within(limit) : null;
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
        answers.put(question, new Answer(found, limit, near));
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
        return touch(unit.reach(Situation.ON_STATION), region) || touch(unit.reach(Situation.ON_THE_ROAD), region);
    }

    private static boolean touch(Box a, Box b) {
        return a.x0() <= b.x1()
                && b.x0() <= a.x1()
                && a.y0() <= b.y1()
                && b.y0() <= a.y1()
                && a.z0() <= b.z1()
                && b.z0() <= a.z1();
    }
}
