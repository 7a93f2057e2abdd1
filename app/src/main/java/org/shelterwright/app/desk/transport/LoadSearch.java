package org.shelterwright.app.desk.transport;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.layouts.layout.Provenance;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.edit.LetGo;
import org.shelterwright.layouts.transport.scene.JourneyParts;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.transport.JourneySearch;
import org.shelterwright.solver.transport.PlanRequest;
import org.shelterwright.solver.transport.PlanResult;

/**
 * One search for a load at a time: places on all cars and what holds everything. What is pinned keeps its place and what holds it; all
 * else is placed and held anew. What is found is offered, never put on the desk by itself. Needs no window.
 */
final class LoadSearch {
    private final JourneySession session;
    private final JourneySearch search;
    private final Work work;
    private final String program;
    private final ReadOnlyObjectWrapper<SearchStand> stand = new ReadOnlyObjectWrapper<>(SearchStand.NONE);
    private StopSignal stop = new StopSignal();

    /**
     * @param work of its own: a search keeps it busy
     * @param program version of the program, which journeys that are taken over name
     */
    LoadSearch(JourneySession session, JourneySearch search, Work work, String program) {
        this.session = session;
        this.search = search;
        this.work = work;
        this.program = program;
    }

    ReadOnlyObjectProperty<SearchStand> stand() {
        return stand.getReadOnlyProperty();
    }

    /** Why it cannot be started now; empty if it can. */
    Optional<String> obstacle() {
        if (stand.get().running()) {
            return Optional.of("A search is going on. Stop it first.");
        }
        return session.now()
                .map(now -> now.tryingOut() ? Optional.of("Finish the drag first.") : Optional.<String>empty())
                .orElse(Optional.of("No journey is open. Open one, or the sample Road-Rail Move."));
    }

    void start(long seed) {
        JourneyStanding now = session.now().orElseThrow();
        Journey asked = now.journey();
        Journey open = open(asked).withProvenance(new Provenance(program, seed, null));
        JourneyParts parts = now.scene().parts();
        StopSignal signal = new StopSignal();
        stop = signal;
        stand.set(SearchStand.started(asked));
        work.start(
                "Searching for a load",
                () -> search.search(
                        new PlanRequest(open, parts, seed),
                        JourneySearch.USUAL_TRIES,
                        step -> work.onDesk(() -> stand.set(stand.get().step(step))),
                        signal),
                found -> stand.set(stand.get().ended(found)),
                fault -> stand.set(stand.get()
                        .failed(
                                fault instanceof IllegalArgumentException && fault.getMessage() != null
                                        ? fault.getMessage()
                                        : "The search failed: " + fault)));
    }

    /** Asks it to end; the best so far is kept, checked and offered. */
    void stop() {
        if (stand.get().running()) {
            stop.stop();
            stand.set(stand.get().stop());
        }
    }

    /** Why nothing can be taken over; empty if something can. */
    Optional<String> nothing() {
        return stand.get().result() == null ? Optional.of("The search has found nothing yet.") : Optional.empty();
    }

    /**
     * Puts what was found on the desk, as one step that can be undone.
     *
     * @return why not, if what goes, its legs or its cars have changed since the search began
     */
    Optional<String> take() {
        PlanResult found = stand.get().result();
        Journey asked = stand.get().asked();
        JourneyStanding now = session.now().orElse(null);
        if (found == null || asked == null || now == null) {
            return nothing();
        }
        Journey plan = found.scene().journey();
        boolean same = now.journey().pieces().equals(asked.pieces())
                && now.journey().legs().equals(asked.legs())
                && cars(now.journey()).equals(cars(asked));
        if (!same) {
            return Optional.of("What goes, its legs or its cars have changed since this search began. Search again.");
        }
        session.apply("Take over the load", plan);
        return Optional.empty();
    }

    private static List<String> cars(Journey journey) {
        return journey.loads().stream()
                .map(load -> load.id() + " " + load.car())
                .toList();
    }

    /** The journey without what holds things that are not pinned. */
    private static Journey open(Journey journey) {
        Journey open = journey;
        for (Load load : journey.loads()) {
            List<String> moved = load.stands().stream()
                    .filter(stand -> !stand.pinned())
                    .map(Stand::what)
                    .toList();
            if (!moved.isEmpty()) {
                open = new LetGo(load.id(), moved).apply(open);
            }
        }
        return open;
    }
}
