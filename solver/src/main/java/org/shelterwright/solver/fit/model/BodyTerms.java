package org.shelterwright.solver.fit.model;

import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Size;

/** The compiled limits between one unit and the body, as depths (µm). A test holds each equal to its limit class. */
public final class BodyTerms {
    private final Size inside;
    private final int[] intrusions;
    private final int[] swings;

    BodyTerms(Body body) {
        this.inside = body.inside();
        this.intrusions =
                Shape.flat(body.intrusions().stream().map(Intrusion::box).toList());
        this.swings = Shape.flat(body.openings().stream()
                .map(Opening::swing)
                .filter(java.util.Objects::nonNull)
                .map(Box.class::cast)
                .toList());
    }

    /** How far solids reach beyond the inside of the body: the greatest over the faces. */
    public int outside(Option option, Situation situation, int x, int y, int z) {
        int[] hull = option.shape(situation).hull();
        int low = Math.max(-x - hull[0], Math.max(-y - hull[1], -z - hull[2]));
        int high = Math.max(
                x + hull[3] - inside.x(), Math.max(y + hull[4] - inside.y(), z + hull[5] - inside.z()));
        return Math.max(0, Math.max(low, high));
    }

    /** Depth to which solids stand in solids of the body. */
    public int intrusion(Option option, Situation situation, int x, int y, int z) {
        return Depths.greatest(intrusions, option.shape(situation).solids(), x, y, z);
    }

    /** Depth to which clear zones are filled by solids of the body. */
    public int zoneIntrusion(Option option, Situation situation, int x, int y, int z) {
        return Depths.greatest(intrusions, option.shape(situation).zones(), x, y, z);
    }

    /** Depth to which solids stand in the swing of a leaf of an opening. */
    public int doorSwing(Option option, Situation situation, int x, int y, int z) {
        return Depths.greatest(swings, option.shape(situation).solids(), x, y, z);
    }
}
