package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;

/**
 * A generator driven by an engine.
 *
 * @param ratedVA apparent power that it gives without end at reference conditions, all phases (VA)
 * @param ratedW the same as power of the engine (W)
 * @param startVA apparent power that it gives while something starts (VA); {@code null} if not known
 * @param derating how it gives less when high up or hot; {@code null} if not known
 */
public record Generator(
        double ratedVA,
        double ratedW,
        @Nullable Double startVA,
        @Nullable Derating derating) {
    public Generator {
        Figures.positive("rated apparent power (VA)", ratedVA);
        Figures.positive("rated power (W)", ratedW);
    }

    /**
     * Loss of rating above reference conditions; both losses multiply.
     *
     * @param fromM altitude up to which it gives all (m)
     * @param perHundredM share lost for each further 100 m
     * @param fromC air temperature up to which it gives all (°C)
     * @param perKelvin share lost for each further kelvin
     */
    public record Derating(double fromM, double perHundredM, double fromC, double perKelvin) {
        public Derating {
            Figures.within("altitude (m)", fromM, -500, 9000);
            Figures.within("share lost for 100 m", perHundredM, 0, 1);
            Figures.within("temperature (°C)", fromC, -60, 80);
            Figures.within("share lost for a kelvin", perKelvin, 0, 1);
        }

        /**
         * Share of the rating that is left.
         *
         * @param altitudeM height above the sea (m)
         * @param airC temperature of the outside air (°C)
         */
        public double share(double altitudeM, double airC) {
            double ofAltitude = 1 - perHundredM * Math.max(0, altitudeM - fromM) / 100;
            double ofHeat = 1 - perKelvin * Math.max(0, airC - fromC);
            return Math.max(0, ofAltitude) * Math.max(0, ofHeat);
        }
    }
}
