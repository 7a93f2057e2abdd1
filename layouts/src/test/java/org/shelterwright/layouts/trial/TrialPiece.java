package org.shelterwright.layouts.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.piece.AccessNeed;
import org.shelterwright.catalog.piece.CableFace;
import org.shelterwright.catalog.piece.DangerousGoods;
import org.shelterwright.catalog.piece.Loose;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.piece.RackMount;
import org.shelterwright.catalog.piece.RackSupport;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.catalog.rack.Airflow;
import org.shelterwright.catalog.rack.RackStandard;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;

/** Builds pieces for tests. Rack-mounted ones are 440 mm wide and weighed without range; loose ones weigh 1 kg. */
public final class TrialPiece {
    private final String id;
    private final Size size;
    private final boolean racked;
    private final int units;
    private final int frontDepth;
    private Point centre;
    private @Nullable RackSupport support = RackSupport.FRONT_AND_REAR;
    private final List<CableFace> faces = new ArrayList<>();
    private @Nullable Airflow airflow = Airflow.FRONT_TO_REAR;
    private @Nullable Integer slide;
    private @Nullable String securedBy;
    private @Nullable AccessNeed access;
    private boolean blank;
    private @Nullable Double massKg = 1.0;
    private @Nullable Power power;
    private boolean fragile;
    private boolean upright;
    private @Nullable Double leastC;
    private @Nullable Double mostC;
    private @Nullable DangerousGoods goods;
    private Urgency urgency = Urgency.LATER;
    private @Nullable Integer grip = 0;

    private TrialPiece(String id, Size size, boolean racked, int units) {
        this.id = id;
        this.size = size;
        this.racked = racked;
        this.units = units;
        this.frontDepth = Math.min(20_000, size.x() / 2);
        this.centre = size.box().centre();
    }

    /** Takes whole millimetres. */
    public static TrialPiece racked(String id, int units, int depth) {
        return new TrialPiece(id, new Size(depth * 1000, 440_000, RackStandard.panelHeight(units)), true, units);
    }

    /** Takes whole millimetres. */
    public static TrialPiece loose(String id, int x, int y, int z) {
        return new TrialPiece(id, Size.ofMm(x, y, z), false, 0);
    }

    public TrialPiece kg(@Nullable Double mass) {
        massKg = mass;
        return this;
    }

    /** Where its centre of mass is; in the middle unless told. Takes whole millimetres. */
    public TrialPiece centre(int x, int y, int z) {
        centre = Point.ofMm(x, y, z);
        return this;
    }

    public TrialPiece on(@Nullable RackSupport other) {
        support = other;
        return this;
    }

    public TrialPiece cables(Face face, int plugMm, int bendMm) {
        faces.add(new CableFace(face, CableClass.SIGNAL, plugMm * 1000, bendMm * 1000));
        return this;
    }

    public TrialPiece air(@Nullable Airflow other) {
        airflow = other;
        return this;
    }

    public TrialPiece slides(int travelMm, @Nullable String by) {
        slide = travelMm * 1000;
        securedBy = by;
        return this;
    }

    public TrialPiece access(AccessNeed need) {
        access = need;
        return this;
    }

    public TrialPiece blank() {
        blank = true;
        airflow = Airflow.STILL;
        return this;
    }

    public TrialPiece watts(double watts) {
        power = new Power("230 V ac", watts, null, null, null, 1.0, null, null);
        return this;
    }

    public TrialPiece fragile() {
        fragile = true;
        return this;
    }

    public TrialPiece upright() {
        upright = true;
        return this;
    }

    public TrialPiece bears(@Nullable Double least, @Nullable Double most) {
        leastC = least;
        mostC = most;
        return this;
    }

    public TrialPiece goods(String hazardClass, String... apart) {
        goods = new DangerousGoods(hazardClass, null, Set.of(apart));
        return this;
    }

    public TrialPiece urgency(Urgency other) {
        urgency = other;
        return this;
    }

    public TrialPiece grip(@Nullable Integer mm) {
        grip = mm == null ? null : mm * 1000;
        return this;
    }

    public Piece build() {
        MassData mass = new MassData(massKg, centre, MassBasis.WEIGHED, 0.0, 0.0, null);
        RackMount mount = racked
                ? new RackMount(units, frontDepth, support, faces, airflow, slide, null, securedBy, access, blank)
                : null;
        Loose loose = racked ? null : new Loose(fragile, upright, leastC, mostC, goods, urgency, grip);
        return new Piece(id, id, size, mass, mount, loose, power, null);
    }
}
