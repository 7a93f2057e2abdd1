package org.shelterwright.layouts.inside;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;

/**
 * Adds masses up to one: mass and growth as they are, uncertainties as if they all lay on the same side, the centre as the mean
 * weighted by the masses with growth. Of a piece that states no centre, the middle counts, and may be off by half its length.
 */
final class MassSum {
    private final Rules rules;
    private double massKg;
    private double grownKg;
    private double uncertaintyKg;
    private double x;
    private double y;
    private double z;
    private double off;
    private MassBasis worst = MassBasis.WEIGHED;
    private @Nullable MassBasis growthMissing;
    private @Nullable MassBasis uncertaintyMissing;
    private boolean massMissing;
    private boolean centreMissing;

    MassSum(Rules rules) {
        this.rules = rules;
    }

    /** Adds what is empty. */
    void add(@Nullable MassData data) {
        if (data == null) {
            massMissing = true;
        } else {
            Point centre = data.centre();
            Integer range = data.centreUncertainty();
            centreMissing |= centre == null;
            add(data, centre == null ? Point.ORIGIN : centre, range == null ? 0 : range);
        }
    }

    /** Adds a piece at its place. */
    void add(MassData data, Point centre, Box box) {
        Integer range = data.centreUncertainty();
        int half = Math.max(box.x1() - box.x0(), Math.max(box.y1() - box.y0(), box.z1() - box.z0())) / 2;
        add(data, centre, data.centre() == null ? half : range == null ? 0 : range);
    }

    private void add(MassData data, Point centre, int range) {
        Double own = data.massKg();
        if (own == null) {
            massMissing = true;
            return;
        }
        MassBasis basis = data.basis();
        worst = basis.compareTo(worst) < 0 ? basis : worst;
        Double stated = data.growthShare();
        OptionalDouble growth =
                stated != null ? OptionalDouble.of(stated) : rules.value(Figure.growth(basis));
        if (growth.isEmpty()) {
            growthMissing = basis;
        }
        Double range1 = data.uncertaintyKg();
        OptionalDouble share = rules.value(Figure.uncertainty(basis));
        if (range1 == null && share.isEmpty()) {
            uncertaintyMissing = basis;
        }
        double grown = own * (1 + growth.orElse(0));
        massKg += own;
        grownKg += grown;
        uncertaintyKg += range1 != null ? range1 : own * share.orElse(0);
        x += grown * centre.x();
        y += grown * centre.y();
        z += grown * centre.z();
        off += grown * range;
    }

    MassData sum() {
        if (massMissing) {
            return new MassData(null, null, worst, null, null, null);
        }
        if (massKg == 0) {
            return new MassData(0.0, centreMissing ? null : Point.ORIGIN, worst, 0.0, 0.0, null);
        }
        Point centre = centreMissing
                ? null
                : new Point((int) Math.round(x / grownKg), (int) Math.round(y / grownKg), (int) Math.round(z / grownKg));
        MassBasis basis =
                growthMissing != null ? growthMissing : uncertaintyMissing != null ? uncertaintyMissing : worst;
        return new MassData(
                massKg,
                centre,
                basis,
                growthMissing != null ? null : (grownKg - massKg) / massKg,
                uncertaintyMissing != null ? null : uncertaintyKg,
                (int) Math.round(off / grownKg));
    }
}
