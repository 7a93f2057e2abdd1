package org.shelterwright.layouts.ledger.restraint;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.restraint.group.GroupForces;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * The forces of one group under every push.
 *
 * @param unheld a push that nothing balances; {@code null} if there is none
 * @param worst the most used part; {@code null} if a push is not balanced or there is none
 * @param pullN pull by push, then by fixing (N)
 */
@SuppressWarnings("ArrayRecordComponent") // Kept with the unit, and never compared.
record Solved(@Nullable Push unheld, @Nullable Strain worst, double[][] pullN) {
    static Solved of(PlacedUnit unit, List<HeldFixing> fixings, StackLoad load, List<Push> pushes) {
        GroupModel model = new GroupModel(unit, fixings, load);
        double[][] pulls = new double[pushes.size()][];
        int at = 0;
        int governing = 0;
        boolean ofBolt = false;
        double use = -1;
        double[] shear = new double[pushes.size()];
        for (int i = 0; i < pulls.length; i++) {
            Push push = pushes.get(i);
            GroupForces forces = model.under(push);
            if (!forces.held()) {
                return new Solved(push, null, new double[0][]);
            }
            pulls[i] = forces.pullN();
            for (int j = 0; j < fixings.size(); j++) {
                HeldFixing fixing = fixings.get(j);
                double shearN = forces.shearN(j);
                double bolt =
                        fixing.boltUse(pulls[i][j], shearN, push.loadCase().basis());
                double hardPoint = fixing.hardPointUse(pulls[i][j], shearN);
                double most = Math.max(bolt, hardPoint);
                if (most > use * (1 + 1e-9)) {
                    use = most;
                    at = i;
                    governing = j;
                    ofBolt = bolt >= hardPoint;
                    shear[i] = shearN;
                }
            }
        }
        Strain worst =
                use < 0 ? null : new Strain(governing, pushes.get(at), pulls[at][governing], shear[at], ofBolt, use);
        return new Solved(null, worst, pulls);
    }

    boolean holds() {
        return unheld == null && worst != null && worst.use() <= 1;
    }
}
