package org.shelterwright.layouts.asbuilt;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Millimetres;

/**
 * What scales read under a filled body: level, and tilted if the height of its centre is wanted too.
 *
 * @param layout id of the layout
 * @param date ISO 8601 date
 * @param scale which scale, with its calibration; {@code null} if not stated
 * @param supports the wheels, axles or pads
 * @param pivotHeight height of the supports in the frame of the body (µm): of the wheel centres for wheels that roll, of the pads
 *     else
 * @param tilt the tilted weighing; {@code null} if there was none
 * @param others what stood on the scales and is not in the layout, such as the truck and its driver
 */
public record Weighing(
        String layout,
        String date,
        @Nullable String scale,
        List<Support> supports,
        @Millimetres int pivotHeight,
        @Nullable Tilt tilt,
        List<Other> others) {
    public static final JsonFormat<Weighing> FORMAT = JsonFormat.of("shelterwright-weighing", 1, Weighing.class);

    private static final double LARGEST_KG = 100_000;

    /**
     * One support.
     *
     * @param x its place along the body (µm)
     * @param y its place across the body (µm)
     * @param levelKg reading with the body level (kg)
     * @param tiltedKg reading with the body tilted (kg); {@code null} if there was none
     * @param uncertaintyKg half width of the range of each reading (kg)
     */
    public record Support(
            String name,
            @Millimetres int x,
            @Millimetres int y,
            double levelKg,
            @Nullable Double tiltedKg,
            double uncertaintyKg) {
        public Support {
            Figures.within("reading (kg)", levelKg, 0, LARGEST_KG);
            Figures.within("uncertainty of a reading (kg)", uncertaintyKg, 0, LARGEST_KG);
            if (tiltedKg != null) {
                Figures.within("reading (kg)", tiltedKg, 0, LARGEST_KG);
            }
        }
    }

    /**
     * A tilt.
     *
     * @param frontUpDegrees how far the front was raised; below zero if the rear was
     * @param uncertaintyDegrees half width of its range
     */
    public record Tilt(double frontUpDegrees, double uncertaintyDegrees) {
        public Tilt {
            Figures.within("tilt (°)", frontUpDegrees, -45, 45);
            Figures.within("uncertainty of a tilt (°)", uncertaintyDegrees, 0, 10);
            if (Math.abs(frontUpDegrees) < 1) {
                throw new IllegalArgumentException(
                        "A tilt of " + frontUpDegrees + "° is too little to tell a height: tilt by 5° or more.");
            }
        }
    }

    /**
     * Something else on the scales.
     *
     * @param uncertaintyKg half width of the range of its mass (kg)
     */
    public record Other(
            String name,
            double massKg,
            double uncertaintyKg,
            @Millimetres int x,
            @Millimetres int y,
            @Millimetres int z) {
        public Other {
            Figures.within("mass (kg)", massKg, 0, LARGEST_KG);
            Figures.within("uncertainty of a mass (kg)", uncertaintyKg, 0, LARGEST_KG);
        }
    }

    public Weighing {
        supports = List.copyOf(supports);
        others = List.copyOf(others);
        if (supports.size() < 2) {
            throw new IllegalArgumentException("A weighing needs two supports at least.");
        }
        if (supports.stream().mapToDouble(Support::levelKg).sum() <= 0) {
            throw new IllegalArgumentException("The scales read nothing: enter the readings.");
        }
        if (tilt != null && supports.stream().anyMatch(one -> one.tiltedKg() == null)) {
            throw new IllegalArgumentException("A tilted weighing needs a tilted reading of every support.");
        }
    }
}
