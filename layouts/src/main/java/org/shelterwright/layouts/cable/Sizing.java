package org.shelterwright.layouts.cable;

import java.util.OptionalDouble;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.cable.Conductors;
import org.shelterwright.layouts.brief.Duty;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/** Whether a cable is large enough for what it carries: by its current, and by its voltage drop over a length. */
public final class Sizing {
    private Sizing() {}

    /** Greatest voltage drop of a wire as a share: its own, else that of the rules; empty if neither is set. */
    public static OptionalDouble mostDrop(Scene scene, Wire wire) {
        Duty stated = wire.duty();
        Double own = stated == null ? null : stated.dropShare();
        return own == null ? scene.rules().value(Figure.VOLTAGE_DROP) : OptionalDouble.of(own);
    }

    /** Share of the current of a cable that it bears: less among others. Empty if the rules do not say. */
    public static OptionalDouble share(Scene scene, boolean among) {
        return among ? scene.rules().value(Figure.CABLE_GROUPING) : OptionalDouble.of(1);
    }

    /**
     * Voltage drop as a share of the nominal voltage.
     *
     * @param lengthM length of the cable, one way (m)
     * @param temperatureC of the conductors (°C)
     */
    public static double drop(WireDuty duty, Conductors conductors, double lengthM, double temperatureC) {
        double ohmPerM = Resistance.ohmPerM(conductors, temperatureC);
        return VoltageDrop.volts(duty.phases(), lengthM, duty.currentA(), ohmPerM) / duty.voltageV();
    }

    /**
     * Whether a cable serves a wire of a length, lying among others; what is not known is taken to serve.
     *
     * @param lengthM length of the cable, one way (m)
     */
    public static boolean serves(Scene scene, Wire wire, WireDuty duty, Cable cable, double lengthM) {
        Double currentA = cable.currentA();
        if (duty.gap() != null) {
            return true;
        }
        boolean bears = currentA == null
                || duty.currentA() <= currentA * share(scene, true).orElse(1);
        Conductors conductors = cable.conductors();
        OptionalDouble most = mostDrop(scene, wire);
        OptionalDouble warm = scene.rules().value(Figure.CONDUCTOR_TEMPERATURE);
        boolean drops = conductors == null
                || most.isEmpty()
                || warm.isEmpty()
                || drop(duty, conductors, lengthM, warm.getAsDouble()) <= most.getAsDouble();
        return bears && drops;
    }
}
