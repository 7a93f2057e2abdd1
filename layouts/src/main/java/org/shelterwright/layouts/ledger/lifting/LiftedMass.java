package org.shelterwright.layouts.ledger.lifting;

import java.util.List;
import java.util.Optional;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.Influence;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Quantity;

/**
 * What the filled body weighs off its carrier, as on the road, and where its centre of mass may lie over all load states.
 *
 * @param massKg greatest mass (kg)
 * @param state load state of the greatest mass
 * @param x least and greatest place of the centre (m)
 * @param y least and greatest place of the centre (m)
 * @param highZ greatest height of the centre above the floor (m)
 */
record LiftedMass(double massKg, String state, double[] x, double[] y, double highZ) {
    static final double STANDARD_GRAVITY = 9.80665;
    static final String NO_MASS = "Body and units together have no mass, and so no centre.";

    private static final Quantity MASS = Quantity.ofBody(Influence.MASS);
    private static final Quantity ALONG = Quantity.ofBody(Influence.MOMENT_X);
    private static final Quantity ACROSS = Quantity.ofBody(Influence.MOMENT_Y);
    private static final Quantity UP = Quantity.ofBody(Influence.MOMENT_Z);

    /** What is missing for it. */
    static List<Gap> gaps(LoadStates states) {
        return states.gaps(MASS, ALONG, ACROSS, UP);
    }

    /** Empty if there is no mass. */
    static Optional<LiftedMass> of(LoadStates states) {
        Extreme mass = states.most(MASS, states.roadModes());
        return states.mostRatio(UP, MASS, states.roadModes())
                .map(z -> new LiftedMass(
                        mass.worst(), mass.state().text(), ends(states, ALONG), ends(states, ACROSS), z.worst()));
    }

    private static double[] ends(LoadStates states, Quantity moment) {
        return new double[] {
            states.leastRatio(moment, MASS, states.roadModes()).orElseThrow().worst(),
            states.mostRatio(moment, MASS, states.roadModes()).orElseThrow().worst()
        };
    }
}
