package org.shelterwright.layouts.ledger.heat;

import org.shelterwright.catalog.item.AirHandling;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.air.StateHeat;

/**
 * What heats makes up for all that goes out: {@code Q = (UA + V ρ c) (T_r − T_o)} at the least room temperature T_r, with nothing counted for equipment,
 * people and sun, so that a cold room without anybody in it is kept warm too.
 *
 * <p>Source: heat loss by transmission and ventilation, as in EN 12831-1 (from memory).
 */
final class Heating extends HeatLimit {
    Heating() {
        super(
                "heat.heating",
                "Heating",
                Source.fromMemory("EN 12831-1", "heat loss by transmission and ventilation"),
                "Nothing must be heated.");
    }

    @Override
    Need need(StateHeat heat) {
        return new Need(
                heat,
                heat.heatingNeededW(),
                heat.heatingW(),
                " (walls " + amount(heat.lossThroughW()) + ", air " + amount(heat.lossAirW()) + ")");
    }

    @Override
    boolean open(StateHeat heat) {
        return !heat.gaps().isEmpty();
    }

    @Override
    String unit() {
        return "W";
    }

    @Override
    String what() {
        return "The room must be heated by";
    }

    @Override
    String mend(double missing) {
        return "Add heating of at least " + amount(missing) + ", or insulate the body better.";
    }

    @Override
    boolean does(AirHandling air) {
        return air.heatingW() != null;
    }
}
