package org.shelterwright.layouts.trial;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.DrillZone;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.body.Insulation;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;

/** Builds bodies for tests; without doors, holes or intrusions unless told. */
public final class TrialBody {
    private final Size inside;
    private final List<Intrusion> intrusions = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();
    private final List<HoleGrid> grids = new ArrayList<>();
    private final List<DrillZone> drillZones = new ArrayList<>();
    private @Nullable Insulation insulation;

    private TrialBody(Size inside) {
        this.inside = inside;
    }

    /** Takes whole millimetres. */
    public static TrialBody of(int x, int y, int z) {
        return new TrialBody(Size.ofMm(x, y, z));
    }

    public TrialBody intrusion(String name, Box box) {
        intrusions.add(new Intrusion(name, box));
        return this;
    }

    public TrialBody opening(String name, Opening.Kind kind, Face wall, Box area, boolean exit, @Nullable Box swing) {
        openings.add(new Opening(name, kind, wall, area, exit, swing));
        return this;
    }

    /** An opening whose leaf hangs at a side. */
    public TrialBody hung(String name, Face wall, Box area, Box swing, Face hinge) {
        openings.add(new Opening(name, Opening.Kind.DOOR, wall, area, true, swing, hinge));
        return this;
    }

    /** A door and exit in the rear wall, 2 m high, from y0 to y1 (mm). */
    public TrialBody rearDoor(int y0, int y1) {
        return opening("rear door", Opening.Kind.DOOR, Face.REAR, Box.ofMm(0, y0, 0, 0, y1, 2000), true, null);
    }

    public TrialBody grid(
            String name, Face surface, Point first, Axis along, int pitchMm, int count, int rows, Strength strength) {
        grids.add(new HoleGrid(
                name, surface, first, along, pitchMm * 1000, count, pitchMm * 1000, rows, List.of("M10"), strength));
        return this;
    }

    /** A floor grid of M10 holes every 50 mm from (50, 50). */
    public TrialBody floorGrid() {
        int along = inside.x() / 50_000 - 1;
        int across = inside.y() / 50_000 - 1;
        return grid(
                "floor grid",
                Face.BOTTOM,
                Point.ofMm(50, 50, 0),
                Axis.X,
                50,
                along,
                across,
                new Strength(5000.0, 8000.0, null));
    }

    public TrialBody drillZone(String name, Face surface, Box area, Strength strength) {
        drillZones.add(new DrillZone(name, surface, area, List.of(), strength));
        return this;
    }

    public TrialBody insulation(Insulation known) {
        insulation = known;
        return this;
    }

    public Body build() {
        return new Body(
                "trial-body",
                "Trial body",
                inside,
                inside.box().grown(50_000, 50_000, 50_000),
                intrusions,
                openings,
                grids,
                drillZones,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                MassData.of(1000, new Point(inside.x() / 2, inside.y() / 2, 500_000), MassBasis.WEIGHED),
                null,
                insulation,
                null);
    }
}
