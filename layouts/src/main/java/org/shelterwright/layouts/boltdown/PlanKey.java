package org.shelterwright.layouts.boltdown;

import java.nio.charset.StandardCharsets;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.json.ContentHash;

/**
 * Short hashes by which a record tells whether what it was made for has changed since: of the joints of a step, and of a whole
 * plan.
 */
public final class PlanKey {
    private static final int DIGITS = 12;

    private PlanKey() {}

    /** Of where a unit is and how it is bolted. A torque that was recorded for another one is void. */
    public static String joints(BoltDownStep step) {
        StringBuilder text = new StringBuilder();
        text.append(step.unit().id()).append('|').append(step.unit().pose(Situation.ON_STATION));
        for (Bolting bolting : step.boltings()) {
            text.append('|').append(bolting.text()).append('|').append(bolting.finalNm());
            bolting.places()
                    .forEach(place -> text.append('|').append(place.at()).append(place.into()));
        }
        return hash(text);
    }

    /** Of all steps with their order and checks. */
    public static String plan(BoltDownPlan plan) {
        StringBuilder text = new StringBuilder();
        for (BoltDownStep step : plan.steps()) {
            text.append(joints(step)).append('|').append(step.checks());
        }
        return hash(text);
    }

    private static String hash(StringBuilder text) {
        return ContentHash.of(text.toString().getBytes(StandardCharsets.UTF_8)).substring(0, DIGITS);
    }
}
