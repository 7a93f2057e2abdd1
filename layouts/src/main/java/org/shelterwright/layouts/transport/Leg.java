package org.shelterwright.layouts.transport;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.layouts.layout.Acceptance;

/**
 * A leg of a journey.
 *
 * @param distanceKm {@code null} if not stated
 * @param ruleSets ids of the rule sets that apply; a later one overrides an earlier one
 * @param loadCases ids of the load cases of these sets that apply; empty: all
 * @param outline id of the outline that must be kept; {@code null} if not known
 * @param lineCategory such as "C4"; {@code null} if not known
 * @param curveM least radius of the way (m); {@code null} if not known
 * @param wet whether loads stand on wet floors
 * @param ramp over which vehicles are driven onto the cars; {@code null} if none is used
 * @param restrictions bridges and narrow places
 * @param drives vehicles that go on their own wheels
 * @param loads ids of the loads that go
 * @param lifts ids of pieces and loads that are lifted on or off
 * @param acceptances rows of the ledger of this leg that a person has accepted; their units are ids of pieces and loads
 */
public record Leg(
        String id,
        String name,
        Mode mode,
        String from,
        String to,
        @Nullable Double distanceKm,
        List<String> ruleSets,
        List<String> loadCases,
        @Nullable String outline,
        @Nullable String lineCategory,
        @Nullable Double curveM,
        boolean wet,
        @Nullable Ramp ramp,
        List<Restriction> restrictions,
        List<Drive> drives,
        List<String> loads,
        List<String> lifts,
        List<Acceptance> acceptances,
        @Nullable String note) {
    public Leg {
        ruleSets = List.copyOf(ruleSets);
        loadCases = List.copyOf(loadCases);
        restrictions = List.copyOf(restrictions);
        drives = List.copyOf(drives);
        loads = List.copyOf(loads);
        lifts = List.copyOf(lifts);
        acceptances = List.copyOf(acceptances);
        if (distanceKm != null) {
            Figures.within("distance of leg " + id + " (km)", distanceKm, 0, 50_000);
        }
        if (curveM != null) {
            Figures.within("least curve of leg " + id + " (m)", curveM, 5, 100_000);
        }
    }

    /**
     * A vehicle on its own wheels.
     *
     * @param vehicle id of the piece; a body goes on the carrier of its layout
     * @param trailer id of the piece that it draws; {@code null} if it goes alone
     */
    public record Drive(String vehicle, @Nullable String trailer) {}

    /** What a person has accepted of a row of its ledger. */
    public Optional<Acceptance> acceptance(String limit, List<String> units) {
        return acceptances.stream().filter(one -> one.covers(limit, units)).findFirst();
    }

    /** The same leg with other loads. */
    public Leg withLoads(List<String> others) {
        return with(others, acceptances);
    }

    /** The same leg with other acceptances. */
    public Leg withAcceptances(List<Acceptance> others) {
        return with(loads, others);
    }

    private Leg with(List<String> otherLoads, List<Acceptance> otherAcceptances) {
        return new Leg(
                id,
                name,
                mode,
                from,
                to,
                distanceKm,
                ruleSets,
                loadCases,
                outline,
                lineCategory,
                curveM,
                wet,
                ramp,
                restrictions,
                drives,
                otherLoads,
                lifts,
                otherAcceptances,
                note);
    }
}
