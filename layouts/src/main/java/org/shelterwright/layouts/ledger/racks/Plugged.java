package org.shelterwright.layouts.ledger.racks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.shelterwright.catalog.item.Current;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.rack.PowerStrip;
import org.shelterwright.layouts.inside.InRack;

/**
 * Which strip of a bay each piece draws from.
 *
 * @param pieces by name of the strip
 * @param unknown pieces of which it cannot be told, in words
 */
record Plugged(Map<String, List<InRack>> pieces, List<String> unknown) {
    static Plugged of(FilledBay bay) {
        Map<String, List<InRack>> pieces = new LinkedHashMap<>();
        List<String> unknown = new ArrayList<>();
        bay.bay().strips().forEach(strip -> pieces.put(strip.name(), new ArrayList<>()));
        for (InRack piece : bay.working()) {
            Power power = piece.piece().power();
            if (power == null) {
                continue;
            }
            String named = piece.spec().strip();
            List<String> fitting = bay.bay().strips().stream()
                    .filter(strip -> strip.supply().equals(power.supply()))
                    .map(PowerStrip::name)
                    .toList();
            if (named != null ? fitting.contains(named) : fitting.size() == 1) {
                pieces.get(named != null ? named : fitting.get(0)).add(piece);
            } else if (named != null) {
                unknown.add(piece.name() + " (no strip \"" + named + "\" with " + power.supply() + ")");
            } else {
                unknown.add(piece.name() + (fitting.isEmpty() ? " (no strip with " + power.supply() + ")" : ""));
            }
        }
        return new Plugged(pieces, unknown);
    }

    /** Current that a piece draws at full use (A); empty if voltage or power factor are not stated. */
    static OptionalDouble currentA(InRack piece, double otherFactor) {
        Power power = piece.piece().power();
        Power.Nominal nominal = power == null ? null : power.nominal().orElse(null);
        if (power == null || nominal == null) {
            return OptionalDouble.empty();
        }
        boolean ac = nominal.current() == Current.AC;
        Double own = power.powerFactor();
        double factor = ac ? own == null ? otherFactor : own : 1;
        double phases = power.threePhase() ? Math.sqrt(3) : 1;
        return factor <= 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(power.ratedW() / (factor * phases * nominal.voltageV()));
    }
}
