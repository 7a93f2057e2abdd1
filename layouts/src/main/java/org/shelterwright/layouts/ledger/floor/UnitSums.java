package org.shelterwright.layouts.ledger.floor;

import java.util.Arrays;
import java.util.List;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.state.MassModel;

/**
 * What each unit on the floor presses with, by the number of the unit: its own mass and that of all that it carries, in the worst
 * case and nominal, with moments from the datum of the body (kg, kg·m).
 */
final class UnitSums {
    final double[] worst;
    final double[] worstX;
    final double[] worstY;
    final double[] nominal;
    final double[] nominalX;
    final double[] nominalY;
    /** Mass times the range of its centre (kg·m). */
    final double[] off;

    private final int[] roots;

    UnitSums(int units) {
        this(
                new double[units],
                new double[units],
                new double[units],
                new double[units],
                new double[units],
                new double[units],
                new double[units],
                new int[units]);
        Arrays.fill(roots, -1);
    }

    private UnitSums(
            double[] worst,
            double[] worstX,
            double[] worstY,
            double[] nominal,
            double[] nominalX,
            double[] nominalY,
            double[] off,
            int[] roots) {
        this.worst = worst;
        this.worstX = worstX;
        this.worstY = worstY;
        this.nominal = nominal;
        this.nominalX = nominalX;
        this.nominalY = nominalY;
        this.off = off;
        this.roots = roots;
    }

    /** Adds a unit, tanks at their least, to the one on the floor that carries it. */
    void add(PlacedUnit unit, MassModel model, Situation situation, int root) {
        roots[unit.index()] = root;
        Item item = unit.item();
        MassData data = item.mass();
        Point centre = data.centre();
        if (data.massKg() != null && centre != null) {
            Point at = unit.pose(situation).apply(centre, item.size());
            double grown = model.grownKg(data).orElse(data.massKg());
            double most = grown + model.uncertaintyKg(data).orElse(0);
            add(root, most, grown, at);
            off[root] += data.centreUncertainty() == null ? 0 : most * Lengths.metres(data.centreUncertainty());
        }
        for (Tank tank : item.tanks()) {
            Point at = unit.pose(situation).apply(tank.centre(), item.size());
            add(root, tank.leastKg(), tank.leastKg(), at);
        }
    }

    private void add(int root, double most, double grown, Point at) {
        double x = Lengths.metres(at.x());
        double y = Lengths.metres(at.y());
        worst[root] += most;
        worstX[root] += most * x;
        worstY[root] += most * y;
        nominal[root] += grown;
        nominalX[root] += grown * x;
        nominalY[root] += grown * y;
    }

    /** The same with all tanks full. */
    UnitSums withTanksFull(List<PlacedUnit> units, Situation situation) {
        UnitSums full = new UnitSums(
                worst.clone(),
                worstX.clone(),
                worstY.clone(),
                nominal.clone(),
                nominalX.clone(),
                nominalY.clone(),
                off,
                roots);
        for (PlacedUnit unit : units) {
            int root = roots[unit.index()];
            for (Tank tank : root < 0 ? List.<Tank>of() : unit.item().tanks()) {
                Pose pose = unit.pose(situation);
                double more = tank.fullKg() - tank.leastKg();
                full.add(root, more, more, pose.apply(tank.centre(), unit.item().size()));
            }
        }
        return full;
    }
}
