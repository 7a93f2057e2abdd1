package org.shelterwright.layouts.ledger.transport.securing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * Each eye and anchor point is used in one direction lengthways and in one sideways. Source: MIL-STD-209K, tie-down provisions: each used
 * in one longitudinal and one lateral direction only (seen).
 */
final class OneWay extends LegLimit {
    private static final double LEAST_PART = 0.1;

    OneWay() {
        super(
                "one-direction",
                "Points used in one direction",
                Source.seen(
                        "MIL-STD-209K", "each tie-down provision in one longitudinal and one lateral direction only"),
                "Every eye and anchor point is used in one direction.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            Map<String, List<Rope>> byPoint = new LinkedHashMap<>();
            for (Rope rope : Rope.of(leg, load)) {
                if (rope.direct()) {
                    String piece = rope.lashing().what().get(0);
                    byPoint.computeIfAbsent("anchor point " + rope.lashing().anchor(), key -> new ArrayList<>())
                            .add(rope);
                    byPoint.computeIfAbsent("eye " + rope.lashing().eye() + " of " + piece, key -> new ArrayList<>())
                            .add(rope);
                }
            }
            byPoint.forEach((point, ropes) -> assess(leg, load, point, ropes, rows));
        }
    }

    private void assess(LegScene leg, PlacedLoad load, String point, List<Rope> ropes, Rows rows) {
        if (split(ropes.stream().map(Rope::alongX).toList())
                || split(ropes.stream().map(Rope::alongY).toList())) {
            List<String> units = new ArrayList<>();
            ropes.forEach(rope -> units.add(rope.lashing().what().get(0)));
            units.add(load.id());
            rows.add(draft(leg, rows)
                    .units(units.stream().distinct().toList())
                    .mend("Give one of the lashings a point of its own.")
                    .atMost(
                            2,
                            1,
                            "directions",
                            "The " + point + " on " + load.name() + " is pulled in opposite directions by lashings "
                                    + String.join(
                                            " and ",
                                            ropes.stream()
                                                    .map(rope -> rope.lashing().key())
                                                    .toList())
                                    + "."));
        }
    }

    private static boolean split(List<Double> parts) {
        return parts.stream().anyMatch(part -> part > LEAST_PART)
                && parts.stream().anyMatch(part -> part < -LEAST_PART);
    }
}
