package org.shelterwright.layouts.power;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.brief.Supply;

/**
 * What flows through one supply in one state.
 *
 * @param live whether there is voltage on it
 * @param feeder the supply that feeds it, converted or as charger; {@code null} if it has its own source
 * @param passes whether a converter passes the current on unconverted
 * @param draws its units, off ones included, in the order of the brief
 * @param peakVA apparent power at once on each line, with diversity and what is fed from it (VA)
 * @param peakW the same as power (W)
 * @param meanW mean power, all lines (W)
 * @param takenW power that it takes from its feeder at once (W); 0 if it has none
 * @param takenVA the same as apparent power (VA)
 * @param takenMeanW the same in the mean (W)
 * @param lossW heat of conversion or charging (W)
 * @param chargeA charging current, loads left out (A); 0 if nothing charges it
 * @param gaps what is missing for these figures
 */
public record SupplyFlow(
        Supply supply,
        boolean live,
        @Nullable Supply feeder,
        boolean passes,
        List<Draw> draws,
        List<Double> peakVA,
        List<Double> peakW,
        double meanW,
        double takenW,
        double takenVA,
        double takenMeanW,
        double lossW,
        double chargeA,
        List<PowerGap> gaps) {
    public SupplyFlow {
        draws = List.copyOf(draws);
        peakVA = List.copyOf(peakVA);
        peakW = List.copyOf(peakW);
        gaps = List.copyOf(gaps);
    }

    /** Apparent power at once, all lines (VA). */
    public double totalVA() {
        return peakVA.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Power at once, all lines (W). */
    public double totalW() {
        return peakW.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Current on a line (A). */
    public double currentA(int line) {
        return peakVA.get(line) / supply.voltageV();
    }

    /** The line that bears most. */
    public int fullestLine() {
        int fullest = 0;
        for (int i = 1; i < peakVA.size(); i++) {
            if (peakVA.get(i) > peakVA.get(fullest)) {
                fullest = i;
            }
        }
        return fullest;
    }

    /** Whether a battery gives what it carries, since nothing feeds it. */
    public boolean discharging() {
        return live && supply.kind() == Supply.Kind.BATTERY && feeder == null;
    }
}
