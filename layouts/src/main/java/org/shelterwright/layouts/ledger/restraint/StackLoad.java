package org.shelterwright.layouts.ledger.restraint;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.ledger.fit.CarriedMass;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.state.MassModel;

/**
 * What the fixings of a unit hold on the road: its mass and that of all that rests on or under it, with growth, uncertainty and
 * full tanks, as one mass at their common centre.
 *
 * @param massKg mass (kg)
 * @param x centre in the frame of the body (m)
 * @param y centre (m)
 * @param z centre (m)
 * @param offM half width of the range of the centre (m)
 * @param missing what is not stated, in words
 */
record StackLoad(double massKg, double x, double y, double z, double offM, List<String> missing) {
    StackLoad {
        missing = List.copyOf(missing);
    }

    static StackLoad of(MassModel model, CarriedMass carried) {
        List<String> missing = new ArrayList<>(carried.missing());
        double[] sums = new double[5];
        for (PlacedUnit unit : carried.units()) {
            Item item = unit.item();
            MassData mass = unit.mass(Situation.ON_THE_ROAD);
            double kg = CarriedMass.worstEmptyKg(model, unit, Situation.ON_THE_ROAD);
            Point centre = mass.centre();
            if (centre == null) {
                missing.add("the centre of mass of " + unit.name());
            } else {
                Integer off = mass.centreUncertainty();
                add(sums, kg, unit, centre, off);
            }
            for (Tank tank : item.tanks()) {
                add(sums, tank.fullKg(), unit, tank.centre(), null);
            }
        }
        double kg = sums[0];
        double per = kg == 0 ? 0 : 1 / kg;
        return new StackLoad(kg, sums[1] * per, sums[2] * per, sums[3] * per, sums[4] * per, missing);
    }

    private static void add(double[] sums, double kg, PlacedUnit unit, Point at, @Nullable Integer off) {
        Pose pose = unit.pose(Situation.ON_THE_ROAD);
        Point place = pose.apply(at, unit.item().size());
        sums[0] += kg;
        sums[1] += kg * Lengths.metres(place.x());
        sums[2] += kg * Lengths.metres(place.y());
        sums[3] += kg * Lengths.metres(place.z());
        sums[4] += off == null ? 0 : kg * Lengths.metres(off);
    }
}
