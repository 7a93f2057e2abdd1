package org.shelterwright.catalog.rack;

import java.util.ArrayList;
import java.util.List;

/**
 * Sizes of the 19-inch construction, all exact in micrometres.
 *
 * <p>Source: IEC 60297-3-100 and EIA-310-D: unit 44.45 mm (1.75 in), panel width 482.6 mm (19 in), hole centres 465.1 mm
 * across, opening between the uprights 450.85 mm, holes up an upright 15.875, 15.875 and 12.7 mm apart (5/8, 5/8, 1/2 in);
 * panel height n·44.45 − 0.79 mm (from memory).
 */
public final class RackStandard {
    /** One height unit (µm). */
    public static final int UNIT = 44_450;

    /** Width of a front panel (µm). */
    public static final int PANEL_WIDTH = 482_600;

    /** Distance of the hole rows of the two uprights (µm). */
    public static final int HOLE_CENTRES = 465_100;

    /** Opening between the uprights (µm). */
    public static final int OPENING = 450_850;

    /** Most height units that a bay may have; more is taken for a wrong figure. */
    public static final int MOST_UNITS = 60;

    private static final int PANEL_GAP = 790;
    private static final int[] HOLES_IN_UNIT = {6_350, 22_225, 38_100};

    private RackStandard() {}

    /** Height of so many units (µm). */
    public static int height(int units) {
        return Math.multiplyExact(units, UNIT);
    }

    /** Height of a front panel of so many units (µm). */
    public static int panelHeight(int units) {
        return height(units) - PANEL_GAP;
    }

    /** Heights of all holes of an upright above the lower edge of its first unit (µm), from below. */
    public static List<Integer> holes(int units) {
        List<Integer> holes = new ArrayList<>();
        for (int unit = 0; unit < units; unit++) {
            for (int hole : HOLES_IN_UNIT) {
                holes.add(height(unit) + hole);
            }
        }
        return holes;
    }

    /**
     * Heights of the holes that a panel is screwed to on one side (µm above the lower edge of unit 1): those nearest to its
     * upper and lower edge, and of a panel of one unit its outer two.
     *
     * @param lowest its lowest unit, from 1
     */
    public static List<Integer> screws(int lowest, int units) {
        int base = height(lowest - 1);
        return List.of(base + HOLES_IN_UNIT[0], base + height(units - 1) + HOLES_IN_UNIT[2]);
    }
}
