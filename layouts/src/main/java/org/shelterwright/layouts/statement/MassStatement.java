package org.shelterwright.layouts.statement;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Gap;

/**
 * The mass statement of a layout. Arms of the body and the carrier are from the datum of the body; those of the trailer from its
 * own.
 *
 * @param lines in the order body, units by the brief, cables, carrier; tanks after what holds them
 * @param trailer lines of the trailer and its loads; empty if there is none
 * @param groups subtotals by group, on the road with full tanks, in the order of first use
 * @param states totals by load state
 * @param gaps figures that are missing
 */
public record MassStatement(
        List<MassLine> lines,
        List<MassLine> trailer,
        List<GroupTotal> groups,
        List<StateTotal> states,
        List<Gap> gaps) {
    public static final String DATUM = "inside rear right floor corner of the body; x forward, y to the left, z up";
    public static final String TRAILER_DATUM =
            "ground under the middle of the trailer's first axle; x forward, y to the left, z up";

    public MassStatement {
        lines = List.copyOf(lines);
        trailer = List.copyOf(trailer);
        groups = List.copyOf(groups);
        states = List.copyOf(states);
        gaps = List.copyOf(gaps);
    }

    /**
     * Subtotal of the lines of one group whose mass is known.
     *
     * @param momentXKgM moments from the datum, of lines whose arm is known (kg·m)
     */
    public record GroupTotal(String group, double massKg, double momentXKgM, double momentYKgM, double momentZKgM) {}

    /** The filled body with full tanks; on station as on the road if nothing moves. */
    public Optional<StateTotal> filledBody(Situation situation) {
        List<StateTotal> full = states.stream()
                .filter(total ->
                        total.what().equals("Filled body") && total.state().contains("tanks full"))
                .toList();
        return full.stream()
                .filter(total ->
                        total.state().startsWith(situation == Situation.ON_STATION ? "on station" : "on the road"))
                .findFirst()
                .or(() -> full.stream().findFirst());
    }

    /** Makes the statement of a scene. Cost: linear in its units. */
    public static MassStatement of(Scene scene) {
        return new StatementWriter(scene).write();
    }
}
