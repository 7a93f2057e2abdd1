package org.shelterwright.solver.route;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.drop.Drop;
import org.shelterwright.solver.route.drop.DropSearch;
import org.shelterwright.solver.route.drop.Surroundings;
import org.shelterwright.solver.route.drop.Target;

/** Runs outside trays of one scene, each found once. Not for several threads. */
final class Drops {
    private final Surroundings about;
    private final Map<List<Box>, DropSearch> searches = new HashMap<>();
    private final Map<Question, Optional<Drop>> found = new HashMap<>();

    private record Question(Point start, Target target, int radius, List<Box> shunned, long limit) {}

    Drops(Scene scene) {
        this.about = Surroundings.of(scene);
    }

    /** The cheapest run of a wire from a point to a target; empty if there is none within a limit of cost. */
    Optional<Drop> find(Ask ask, Point start, Target target, long limit) {
        Question question = new Question(start, target, ask.radius(), ask.shunned(), limit);
        Optional<Drop> known = found.get(question);
        if (known == null) {
            known = searches.computeIfAbsent(ask.shunned(), shunned -> new DropSearch(about.shunning(shunned)))
                    .find(start, target, ask.radius(), limit);
            found.put(question, known);
        }
        return known;
    }
}
