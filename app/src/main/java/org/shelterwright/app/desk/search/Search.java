package org.shelterwright.app.desk.search;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.layout.Provenance;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.StopSignal;

/** One search at a time for the layout on the desk. What it finds is offered, never put on the desk by itself. */
public final class Search {
    private static final int OFFERED = 3;

    private final Session session;
    private final Fitter fitter;
    private final Work work;
    private final String program;
    private final ReadOnlyObjectWrapper<Stand> stand = new ReadOnlyObjectWrapper<>(Stand.NONE);
    private StopSignal stop = new StopSignal();

    /**
     * @param work of its own: a search keeps it busy
     * @param program version of the program, which layouts that are taken over name
     */
    public Search(Session session, Fitter fitter, Work work, String program) {
        this.session = session;
        this.fitter = fitter;
        this.work = work;
        this.program = program;
    }

    ReadOnlyObjectProperty<Stand> stand() {
        return stand.getReadOnlyProperty();
    }

    /** Why it cannot be started now; empty if it can. */
    Optional<String> obstacle() {
        if (stand.get().running()) {
            return Optional.of("A search is going on. Stop it first.");
        }
        return session.now().tryingOut() ? Optional.of("Finish the drag first.") : Optional.empty();
    }

    /**
     * Starts.
     *
     * @param keepIdea whether what stands is taken as a first idea; pins are kept in any case
     */
    void start(boolean keepIdea, long seed) {
        StopSignal signal = new StopSignal();
        stop = signal;
        Layout now = session.now().layout();
        Layout from = keepIdea ? now : pinnedOnly(now);
        int threads = Math.max(1, Runtime.getRuntime().availableProcessors());
        FitRequest request = new FitRequest(from, seed, Budget.moves(Budget.USUAL_MOVES), threads, OFFERED);
        stand.set(Stand.started(seed));
        work.start(
                "Searching for places",
                () -> {
                    FitResult found = fitter.fit(
                            request,
                            step -> work.onDesk(() -> stand.set(stand.get().step(step))),
                            signal);
                    return found.with(request.provenance(program, signal.stopped()));
                },
                found -> stand.set(stand.get().ended(found)),
                fault -> stand.set(stand.get()
                        .failed(
                                fault instanceof IllegalArgumentException && fault.getMessage() != null
                                        ? fault.getMessage()
                                        : "The search failed: " + fault)));
    }

    /** Asks it to end; the best so far is kept, checked and offered. */
    public void stop() {
        if (stand.get().running()) {
            stop.stop();
            stand.set(stand.get().stop());
        }
    }

    /** Lets go of what was found; of no effect on a search that goes on. */
    void forget() {
        if (!stand.get().running()) {
            stand.set(Stand.NONE);
        }
    }

    /** Whether a layout that was found is what stands, so that there is nothing to take over. */
    static boolean stands(Layout found, Layout now) {
        return taken(found, now).withProvenance(null).equals(now.withProvenance(null));
    }

    /**
     * What stands once it is taken over: its places, and what was found for just these places, the routes of wires, the order of
     * bolting down and what is inside the units. What people have accepted stays.
     */
    private static Layout taken(Layout found, Layout now) {
        Provenance origin = found.provenance();
        return found.withAcceptances(now.acceptances()).withProvenance(origin == null ? now.provenance() : origin);
    }

    /**
     * Puts a layout that was found on the desk, as one step that can be undone.
     *
     * @param letter by which it is offered
     * @return why not, if the brief has changed since the search began
     */
    Optional<String> adopt(FitOption option, String letter) {
        Layout now = session.now().layout();
        Layout found = option.layout();
        if (!found.brief().equals(now.brief()) || !found.parts().equals(now.parts())) {
            return Optional.of("The brief has changed since this search began. Search again.");
        }
        session.apply("Take over layout " + letter, taken(found, now));
        return Optional.empty();
    }

    private static Layout pinnedOnly(Layout layout) {
        Map<String, Placement> kept = new LinkedHashMap<>(layout.placements());
        kept.values().removeIf(placement -> placement.pin().equals(Pin.NONE));
        return layout.withPlacements(kept);
    }
}
