package org.shelterwright.catalog.rack;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Point;

/**
 * Room between two pairs of uprights for rack-mounted pieces.
 *
 * @param name such as "front bay"
 * @param units height units that it has
 * @param at on the mounting plane of the front uprights, midway between them, at the lower edge of unit 1; in the frame of
 *     the item
 * @param front where its panels look to, in the frame of the item
 * @param frontRoom free depth before the mounting plane, up to a closed door (µm)
 * @param rearRoom free depth behind the mounting plane (µm)
 * @param railDepth distance of the rear uprights behind the front ones (µm); {@code null} if there are none
 * @param ratingKg mass that it bears in all (kg); {@code null} if not known
 * @param railKg mass that one upright bears (kg); {@code null} if not known
 * @param airflow {@code null} if not known
 * @param airM3h air that goes through it (m³/h); {@code null} if not known
 */
public record RackBay(
        String name,
        int units,
        Point at,
        Face front,
        @Millimetres int frontRoom,
        @Millimetres int rearRoom,
        @Nullable @Millimetres Integer railDepth,
        @Nullable Double ratingKg,
        @Nullable Double railKg,
        @Nullable Airflow airflow,
        @Nullable Double airM3h,
        List<PowerStrip> strips) {
    public RackBay {
        if (units < 1 || units > RackStandard.MOST_UNITS) {
            throw new IllegalArgumentException("The bay \"" + name + "\" has " + units + " height units; it must have 1 to "
                    + RackStandard.MOST_UNITS + ".");
        }
        if (!front.upright()) {
            throw new IllegalArgumentException("The panels of bay \"" + name + "\" must look to a side, not up or down.");
        }
        if (frontRoom < 0 || rearRoom <= 0) {
            throw new IllegalArgumentException("The bay \"" + name
                    + "\" must have room behind its mounting plane, and none below zero before it.");
        }
        if (railDepth != null && (railDepth <= 0 || railDepth > rearRoom)) {
            throw new IllegalArgumentException("The rear uprights of bay \"" + name
                    + "\" must stand behind the front ones, within the room behind them.");
        }
        if (ratingKg != null) {
            Figures.positive("rating (kg) of bay " + name, ratingKg);
        }
        if (railKg != null) {
            Figures.positive("rating (kg) of an upright of bay " + name, railKg);
        }
        if (airM3h != null) {
            Figures.notNegative("air (m³/h) of bay " + name, airM3h);
        }
        strips = List.copyOf(strips);
    }

    public Optional<PowerStrip> strip(String strip) {
        return strips.stream().filter(one -> one.name().equals(strip)).findFirst();
    }

    /** Height of all its units (µm). */
    public int height() {
        return RackStandard.height(units);
    }

    /** The room of all its units behind the mounting plane and before it, as wide as a panel; in the frame of the item. */
    public Box room() {
        return box(frontRoom, rearRoom, RackStandard.PANEL_WIDTH, 0, height());
    }

    /**
     * A cuboid about the middle line of the bay, in the frame of the item.
     *
     * @param before depth before the mounting plane (µm)
     * @param behind depth behind it (µm)
     * @param width across (µm)
     * @param low its bottom above the lower edge of unit 1 (µm)
     * @param high its top above the same (µm)
     */
    public Box box(int before, int behind, int width, int low, int high) {
        int half = width / 2;
        int z0 = at.z() + low;
        int z1 = at.z() + high;
        return switch (front) {
            case FRONT -> new Box(at.x() - behind, at.y() - half, z0, at.x() + before, at.y() - half + width, z1);
            case REAR -> new Box(at.x() - before, at.y() - half, z0, at.x() + behind, at.y() - half + width, z1);
            case LEFT -> new Box(at.x() - half, at.y() - behind, z0, at.x() - half + width, at.y() + before, z1);
            default -> new Box(at.x() - half, at.y() - before, z0, at.x() - half + width, at.y() + behind, z1);
        };
    }

    /**
     * A place in the bay in the frame of the item.
     *
     * @param behind depth behind the mounting plane (µm)
     * @param right how far right of the middle, seen by somebody who looks at the panels (µm)
     * @param up above the lower edge of unit 1 (µm)
     */
    public Point point(int behind, int right, int up) {
        int z = at.z() + up;
        return switch (front) {
            case FRONT -> new Point(at.x() - behind, at.y() + right, z);
            case REAR -> new Point(at.x() + behind, at.y() - right, z);
            case LEFT -> new Point(at.x() - right, at.y() - behind, z);
            default -> new Point(at.x() + right, at.y() + behind, z);
        };
    }
}
