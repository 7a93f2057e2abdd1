package org.shelterwright.catalog.piece;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.rack.RackStandard;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Size;

/**
 * One kind of thing that goes into a unit: rack-mounted or loose. Its frame has the origin at the rear right bottom corner of
 * its size; its front looks along x. A rack-mounted piece counts its mass and centre with rails, without plugs.
 *
 * @param id unique in a catalog, such as "radio-vhf"
 * @param size its outline, handles included
 * @param rack {@code null} if it is loose
 * @param loose {@code null} if it is rack-mounted
 * @param power what it takes; {@code null} if it takes none
 * @param note one sentence for people; {@code null} if there is none
 */
public record Piece(
        String id,
        String name,
        Size size,
        MassData mass,
        @Nullable RackMount rack,
        @Nullable Loose loose,
        @Nullable Power power,
        @Nullable String note) {
    public Piece {
        if ((rack == null) == (loose == null)) {
            throw new IllegalArgumentException(
                    "The piece " + id + " must be either rack-mounted or loose. Give one of \"rack\" and \"loose\".");
        }
        if (rack != null) {
            requireInRack(id, size, rack);
        }
    }

    public Optional<RackMount> mount() {
        return Optional.ofNullable(rack);
    }

    public Optional<Loose> stowed() {
        return Optional.ofNullable(loose);
    }

    private static void requireInRack(String id, Size size, RackMount rack) {
        int height = RackStandard.height(rack.units());
        if (size.z() > height) {
            throw new IllegalArgumentException("The piece " + id + " is " + Lengths.format(size.z()) + " mm high, and "
                    + rack.units() + " U are " + Lengths.format(height) + " mm. Give it more units or less height.");
        }
        if (size.y() > RackStandard.PANEL_WIDTH) {
            throw new IllegalArgumentException("The piece " + id + " is " + Lengths.format(size.y())
                    + " mm wide, and a panel is " + Lengths.format(RackStandard.PANEL_WIDTH) + " mm. Correct its width.");
        }
        if (rack.frontDepth() > size.x()) {
            throw new IllegalArgumentException(
                    "The piece " + id + " stands out before the mounting plane by more than its whole depth.");
        }
    }
}
