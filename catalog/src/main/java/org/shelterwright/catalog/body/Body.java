package org.shelterwright.catalog.body;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Size;

/**
 * The inside that is filled. Its frame has the origin at the inside rear right floor corner; x forward, y to the left, z
 * up.
 *
 * @param inside inside size
 * @param outside outside cuboid, in the frame of the body
 * @param grids rails and insert grids
 * @param tare empty mass and its centre
 * @param insulation how heat passes its walls; {@code null} if not known
 */
public record Body(
        String id,
        String name,
        Size inside,
        Box outside,
        List<Intrusion> intrusions,
        List<Opening> openings,
        List<HoleGrid> grids,
        List<DrillZone> drillZones,
        List<FloorZone> floorZones,
        List<CrossMember> crossMembers,
        List<Tray> trays,
        List<EntryPanel> entryPanels,
        List<Provision> provisions,
        MassData tare,
        @Nullable Double grossRatingKg,
        @Nullable Insulation insulation,
        @Nullable String note) {
    public Body {
        intrusions = List.copyOf(intrusions);
        openings = List.copyOf(openings);
        grids = List.copyOf(grids);
        drillZones = List.copyOf(drillZones);
        floorZones = List.copyOf(floorZones);
        crossMembers = List.copyOf(crossMembers);
        trays = List.copyOf(trays);
        entryPanels = List.copyOf(entryPanels);
        provisions = List.copyOf(provisions);
        if (!outside.contains(inside.box())) {
            throw new IllegalArgumentException("The outside of body " + id + " must hold its inside.");
        }
    }

    /** A body of which nothing is known about the passage of heat. */
    public Body(
            String id,
            String name,
            Size inside,
            Box outside,
            List<Intrusion> intrusions,
            List<Opening> openings,
            List<HoleGrid> grids,
            List<DrillZone> drillZones,
            List<FloorZone> floorZones,
            List<CrossMember> crossMembers,
            List<Tray> trays,
            List<EntryPanel> entryPanels,
            List<Provision> provisions,
            MassData tare,
            @Nullable Double grossRatingKg,
            @Nullable String note) {
        this(
                id,
                name,
                inside,
                outside,
                intrusions,
                openings,
                grids,
                drillZones,
                floorZones,
                crossMembers,
                trays,
                entryPanels,
                provisions,
                tare,
                grossRatingKg,
                null,
                note);
    }

    /** Rails, insert grids and drillable zones, in the order of the file. */
    public List<HardPoint> hardPoints() {
        return Stream.<HardPoint>concat(grids.stream(), drillZones.stream()).toList();
    }
}
