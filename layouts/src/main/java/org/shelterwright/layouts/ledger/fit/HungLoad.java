package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * What the dead weight of a unit on a wall or under the roof puts on its fixings, at rest (1 g).
 *
 * <p>With W the weight of the unit and of all that it carries, with growth, uncertainty and full tanks, and n its fixings: under the roof each
 * bears the pull W/n. On a wall each bears the shear W/n, and the pull M h / sum(h²), where M = sum over the carried
 * units of weight times the distance of the centre of mass from the wall, and h is the height of the fixing above the
 * lower edge of the unit, about which it would tip (rigid bracket on elastic bolts, common practice). Accelerations on
 * the road come on top and are the business of restraint.
 *
 * @param missing what is not stated, in words; the loads then hold without it
 */
record HungLoad(PlacedUnit unit, Situation situation, List<OnFixing> fixings, List<String> missing) {
    /** Standard acceleration of free fall (m/s²), exact by definition: 3rd CGPM, 1901. */
    static final double STANDARD_GRAVITY = 9.80665;

    /**
     * @param hardPoint what the fixing lands on; {@code null} if on nothing
     * @param shearN along the surface (N)
     * @param pullN square to the surface (N)
     */
    record OnFixing(PlacedFixing fixing, @Nullable HardPoint hardPoint, double shearN, double pullN) {}

    HungLoad {
        fixings = List.copyOf(fixings);
        missing = List.copyOf(missing);
    }

    /** The loads of all units that hang on a wall or under the roof, in both situations; kept with the scene. */
    static List<HungLoad> all(Scene scene) {
        return scene.derived(All.class, All::of).loads();
    }

    private record All(List<HungLoad> loads) {
        static All of(Scene scene) {
            Landing landing = new Landing(scene.body().hardPoints());
            List<HungLoad> loads = new ArrayList<>();
            for (Situation situation : Situation.values()) {
                for (PlacedUnit unit : scene.units()) {
                    Surface surface = unit.place(situation).surface();
                    if (surface == Surface.WALL || surface == Surface.ROOF) {
                        loads.add(HungLoad.of(scene, landing, unit, situation));
                    }
                }
            }
            return new All(loads);
        }
    }

    private static HungLoad of(Scene scene, Landing landing, PlacedUnit unit, Situation situation) {
        Face mount = MountFace.of(unit.place(situation));
        List<PlacedFixing> fixings = PlacedFixing.of(unit, situation).stream()
                .filter(fixing -> fixing.face() == mount)
                .toList();
        MassModel model = new MassModel(scene.rules());
        CarriedMass carried = CarriedMass.of(scene, model, unit, situation);
        List<String> missing = new ArrayList<>(carried.missing());
        boolean roof = mount == Face.TOP;
        double momentNm = roof ? 0 : momentNm(scene, model, carried, mount, situation, missing);
        double leverSquares = fixings.stream()
                .mapToDouble(fixing -> lever(unit, situation, fixing))
                .map(lever -> lever * lever)
                .sum();
        if (!roof && leverSquares == 0 && !fixings.isEmpty()) {
            missing.add("a fixing above the lower edge of " + unit.name());
        }
        double shareN = carried.worstKg() * STANDARD_GRAVITY / Math.max(1, fixings.size());
        List<OnFixing> loads = new ArrayList<>();
        for (PlacedFixing fixing : fixings) {
            double tippingN = leverSquares == 0 ? 0 : momentNm * lever(unit, situation, fixing) / leverSquares;
            loads.add(new OnFixing(fixing, landing.under(fixing), roof ? 0 : shareN, roof ? shareN : tippingN));
        }
        return new HungLoad(unit, situation, loads, missing);
    }

    /** Moment of the weights about the wall (N·m). */
    private static double momentNm(
            Scene scene, MassModel model, CarriedMass carried, Face wall, Situation situation, List<String> missing) {
        Axis axis = wall.axis();
        Box inside = scene.body().inside().box();
        double momentNm = 0;
        for (PlacedUnit unit : carried.units()) {
            Item item = unit.item();
            Point centre = unit.mass(situation).centre();
            if (centre == null) {
                missing.add("the centre of mass of " + unit.name());
            } else {
                int at = unit.pose(situation).apply(centre, item.size()).along(axis);
                int off = wall.sign() > 0 ? inside.high(axis) - at : at - inside.low(axis);
                momentNm += CarriedMass.worstKg(model, unit, situation) * STANDARD_GRAVITY * Lengths.metres(off);
            }
        }
        return momentNm;
    }

    /** Height of a fixing above the lower edge of its unit (m). */
    private static double lever(PlacedUnit unit, Situation situation, PlacedFixing fixing) {
        return Math.max(
                0, Lengths.metres(fixing.at().z() - unit.outline(situation).z0()));
    }
}
