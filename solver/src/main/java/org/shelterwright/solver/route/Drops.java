package org.shelterwright.solver.route;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.drop.Drop;
import org.shelterwright.solver.route.drop.DropSearch;
import org.shelterwright.solver.route.drop.Obstacles;
import org.shelterwright.solver.route.drop.Slate;
import org.shelterwright.solver.route.drop.Surroundings;
import org.shelterwright.solver.route.drop.Target;

/** Runs outside trays of one scene; those that are known from scenes before it are not searched again. Safe for several threads. */
final class Drops {
    private final Scene scene;
    private final RouteMemory memory;
    private final Map<List<Box>, Obstacles> obstacles = new ConcurrentHashMap<>();
    private final Map<DropMemory.Question, Object> asked = new ConcurrentHashMap<>();

    Drops(Scene scene) {
        this.scene = scene;
        this.memory = RouteMemory.of(scene);
    }

    /** The cheapest run of a wire from a point to a target; empty if there is none within a limit of cost. */
    Optional<Drop> find(Ask ask, Point start, Target target, long limit) {
        DropMemory.Question question = new DropMemory.Question(start, target, ask.radius(), ask.shunned());
        Optional<Drop> known = memory.drops().known(question, limit, scene);
        if (known != null) {
            return known;
        }
        // Wires that begin at one port ask the same at the same time.
        synchronized (asked.computeIfAbsent(question, any -> new Object())) {
            known = memory.drops().known(question, limit, scene);
            return known != null ? known : search(question, limit);
        }
    }

    private Optional<Drop> search(DropMemory.Question question, long limit) {
        Obstacles about = obstacles.computeIfAbsent(question.shunned(), this::obstacles);
        Slate slate = memory.slate();
        DropSearch.Found found =
                new DropSearch(about, slate).look(question.start(), question.target(), question.radius(), limit);
        memory.giveBack(slate);
        memory.drops().keep(question, limit, found, scene);
        return found.drop();
    }

    private Obstacles obstacles(List<Box> shunned) {
        Surroundings about = scene.derived(Surroundings.class, Surroundings::of);
        return Obstacles.of(about.shunning(shunned));
    }
}
