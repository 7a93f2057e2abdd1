package org.shelterwright.layouts.ledger.racks;

import org.shelterwright.catalog.piece.RackSupport;
import org.shelterwright.catalog.rack.RackStandard;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.state.MassModel;

/**
 * What each upright of a bay bears at rest. A piece on the front uprights alone hangs on these; one that is held at the rear too
 * shares between front and rear by the lever of its centre of mass; left and right share by the lever across, between the hole
 * rows 465.1 mm apart.
 *
 * <p>Source: statics of a beam on two supports.
 */
final class RailLoads {
    private final double[] kg = new double[4];

    private RailLoads() {}

    static RailLoads of(FilledBay bay, MassModel model) {
        RailLoads loads = new RailLoads();
        for (InRack piece : bay.pieces()) {
            loads.add(piece, Masses.worstKg(model, piece).orElse(0));
        }
        return loads;
    }

    private void add(InRack piece, double massKg) {
        Point centre = piece.piece().mass().centre();
        Size size = piece.piece().size();
        Point at = centre == null ? size.box().centre() : centre;
        double behind = piece.rearDepth() - at.x();
        double left = at.y() - size.y() / 2.0;
        Integer depth = piece.bay().railDepth();
        RackSupport support = piece.mount().support();
        boolean rear = depth != null && support != null && support != RackSupport.FRONT_UPRIGHTS;
        double rearShare = rear && depth != null ? Math.min(1, Math.max(0, behind / depth)) : 0;
        double rightShare = Math.min(1, Math.max(0, 0.5 - left / RackStandard.HOLE_CENTRES));
        kg[0] += massKg * (1 - rearShare) * rightShare;
        kg[1] += massKg * (1 - rearShare) * (1 - rightShare);
        kg[2] += massKg * rearShare * rightShare;
        kg[3] += massKg * rearShare * (1 - rightShare);
    }

    /** Number of the upright that bears most: front right, front left, rear right, rear left. */
    int most() {
        int most = 0;
        for (int i = 1; i < kg.length; i++) {
            most = kg[i] > kg[most] + 1e-9 ? i : most;
        }
        return most;
    }

    /** What an upright bears (kg). */
    double kg(int rail) {
        return kg[rail];
    }

    static String name(int rail) {
        return (rail < 2 ? "front" : "rear") + (rail % 2 == 0 ? " right" : " left") + " upright";
    }
}
