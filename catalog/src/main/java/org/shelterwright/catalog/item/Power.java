package org.shelterwright.catalog.item;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;

/**
 * What an item takes from its supply and gives off as heat.
 *
 * @param supply which kind of supply, such as "230 V ac" or "24 V dc"
 * @param ratedW power at full use (W)
 * @param idleW power when idle (W); {@code null} if not known
 * @param inrushA peak current when switched on (A); {@code null} if not known
 * @param heatW heat into the room at full use (W); {@code null}: all of the rated power
 * @param powerFactor power in W over apparent power in VA; {@code null}: the default of the rules; of no weight for dc
 * @param phases 1 or 3; {@code null}: 1
 * @param dutyShare mean over an hour of use as a share of the rated power; {@code null}: all of it
 */
public record Power(
        String supply,
        double ratedW,
        @Nullable Double idleW,
        @Nullable Double inrushA,
        @Nullable Double heatW,
        @Nullable Double powerFactor,
        @Nullable Integer phases,
        @Nullable Double dutyShare) {
    private static final Pattern NOMINAL = Pattern.compile("(\\d{1,5}(?:\\.\\d{1,3})?) V (ac|dc)");

    public Power {
        Figures.notNegative("rated power (W)", ratedW);
        if (powerFactor != null) {
            Figures.within("power factor", powerFactor, 0.05, 1);
        }
        if (phases != null && phases != 1 && phases != 3) {
            throw new IllegalArgumentException("The phases of " + phases + " must be 1 or 3.");
        }
        if (dutyShare != null) {
            Figures.within("share of the rated power in use", dutyShare, 0, 1);
        }
    }

    /**
     * What the text of its supply says.
     *
     * @param voltageV for three phases that between two lines
     */
    public record Nominal(double voltageV, Current current) {}

    /** Voltage and current of its supply; empty if the text is not of the form "230 V ac". */
    public Optional<Nominal> nominal() {
        Matcher matcher = NOMINAL.matcher(supply);
        return matcher.matches()
                ? Optional.of(new Nominal(
                        Double.parseDouble(matcher.group(1)), matcher.group(2).equals("ac") ? Current.AC : Current.DC))
                : Optional.empty();
    }

    public boolean threePhase() {
        return phases != null && phases == 3;
    }
}
