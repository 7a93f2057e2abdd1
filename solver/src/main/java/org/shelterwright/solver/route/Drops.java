package org.shelterwright.solver.route;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.drop.Drop;
import org.shelterwright.solver.route.drop.DropSearch;
import org.shelterwright.solver.route.drop.Surroundings;
import org.shelterwright.solver.route.drop.Target;

/** Runs outside trays of one scene; those that are known from scenes before it are not searched again. Not for several threads. */
final class Drops {
    private final Scene scene;
    private final DropMemory memory;
    private final Map<List<Box>, DropSearch> searches = new HashMap<>();
    private @Nullable Surroundings about;

    Drops(Scene scene) {
        this.scene = scene;
        this.memory = RouteMemory.of(scene).drops();
    }

    /** The cheapest run of a wire from a point to a target; empty if there is none within a limit of cost. */
    Optional<Drop> find(Ask ask, Point start, Target target, long limit) {
        DropMemory.Question question = new DropMemory.Question(start, target, ask.radius(), ask.shunned());
        Optional<Drop> known = memory.known(question, limit, scene);
        if (known != null) {
            return known;
        }
        DropSearch.Found found =
                searches.computeIfAbsent(ask.shunned(), this::search).look(start, target, ask.radius(), limit);
        memory.keep(question, limit, found, scene);
        return found.drop();
    }

    private DropSearch search(List<Box> shunned) {
        Surroundings whole = about == null ? Surroundings.of(scene) : about;
        about = whole;
        return new DropSearch(whole.shunning(shunned));
    }
}
