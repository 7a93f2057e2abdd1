package org.shelterwright.app.desk.transport;

import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.solver.transport.PlanProgress;
import org.shelterwright.solver.transport.PlanResult;

/**
 * Where the search for a load stands. Immutable.
 *
 * @param running whether it goes on
 * @param stopping whether it was asked to end
 * @param progress what it told last; {@code null} before the first plan
 * @param asked the journey that it was started with; {@code null} if none was
 * @param result what it found; {@code null} before its end
 * @param failure what went wrong, in a sentence; {@code null} if nothing did
 */
record SearchStand(
        boolean running,
        boolean stopping,
        @Nullable PlanProgress progress,
        @Nullable Journey asked,
        @Nullable PlanResult result,
        @Nullable String failure) {
    static final SearchStand NONE = new SearchStand(false, false, null, null, null, null);

    static SearchStand started(Journey journey) {
        return new SearchStand(true, false, null, journey, null, null);
    }

    SearchStand step(PlanProgress step) {
        return new SearchStand(running, stopping, step, asked, result, failure);
    }

    SearchStand stop() {
        return new SearchStand(running, true, progress, asked, result, failure);
    }

    SearchStand ended(PlanResult found) {
        return new SearchStand(false, false, progress, asked, found, null);
    }

    SearchStand failed(String sentence) {
        return new SearchStand(false, false, progress, asked, null, sentence);
    }
}
