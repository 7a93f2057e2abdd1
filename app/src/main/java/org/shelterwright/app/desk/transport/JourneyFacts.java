package org.shelterwright.app.desk.transport;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.app.journey.JourneyIssue;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** The facts of the status line that come from the journey. */
final class JourneyFacts {
    private JourneyFacts() {}

    /** By their names, in order; without any as long as no journey is open. */
    static Map<String, String> of(JourneySession session) {
        Map<String, String> facts = new LinkedHashMap<>();
        session.now().ifPresent(now -> {
            Optional<LegScene> leg = session.leg();
            Optional<PlacedLoad> load = session.load();
            facts.put(
                    "Leg",
                    leg.map(one -> one.number() + " of " + now.scene().legs().size() + ", "
                                    + one.leg().mode().word())
                            .orElse("none"));
            facts.put(
                    "Car", load.map(one -> one.name() + ", " + one.car().name()).orElse("none"));
            facts.put(
                    "Loaded",
                    load.map(one -> Numerals.of(one.massKg() / 1000, 1) + Numerals.GAP + "t")
                            .orElse(""));
            facts.put("Centre of the load", load.flatMap(JourneyFacts::centre).orElse(""));
            Double curve = leg.map(one -> one.leg().curveM()).orElse(null);
            facts.put("Least curve", curve == null ? "" : Numerals.of(curve, 0) + Numerals.GAP + "m");
            facts.put(
                    "Limits of the journey", JourneyIssue.verdicts(now.ledger().all()));
        });
        return facts;
    }

    private static Optional<String> centre(PlacedLoad load) {
        if (load.unknown().isPresent()) {
            return Optional.of("not assessed");
        }
        return load.massKg() > 0
                ? Optional.of("x " + mm(load.momentX(), load) + ", y " + mm(load.momentY(), load) + ", z "
                        + mm(load.momentZ(), load))
                : Optional.empty();
    }

    private static String mm(double moment, PlacedLoad load) {
        return Numerals.of(moment / load.massKg() / 1000, 0);
    }
}
