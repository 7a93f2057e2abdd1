package org.shelterwright.layouts.ledger.axles;

import java.util.function.BiConsumer;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.VehicleLoads;

/** A limit of the loads of each vehicle; it says so where they cannot be told. */
abstract class VehicleLimit extends NamedLimit implements Limit.OfTotals {
    VehicleLimit(String id, String title, Source source, String heldSentence) {
        super(id, Subject.AXLES, title, Severity.HARD, source, heldSentence);
    }

    /** Adds the rows of one vehicle whose axle loads can be told. */
    abstract void assess(Scene scene, VehicleLoads vehicle, Rows rows);

    @Override
    public void assess(Scene scene, Rows rows) {
        for (VehicleLoads vehicle : VehicleLoads.all(scene)) {
            vehicle.whyNoAxleLoads()
                    .ifPresentOrElse(
                            why -> rows.add(rows.draft(this)
                                    .notAssessed("The axle loads of "
                                            + vehicle.vehicle().name() + " cannot be told: " + why + ".")),
                            () -> assess(scene, vehicle, rows));
        }
    }

    /** Calls with each axle of a vehicle and its number. */
    static void eachAxle(VehicleLoads vehicle, BiConsumer<Integer, Axle> call) {
        for (int i = 0; i < vehicle.vehicle().axles().size(); i++) {
            call.accept(i, vehicle.vehicle().axles().get(i));
        }
    }

    /** Such as "axle 1 of Truck". */
    static String name(VehicleLoads vehicle, Axle axle) {
        return axle.name() + " of " + vehicle.vehicle().name();
    }

    /** The ground between the wheels of an axle of the carrier, in the frame of the body. */
    static Box place(VehicleLoads vehicle, Axle axle) {
        Point body = vehicle.vehicle().bodyAt();
        int half = axle.track() / 2;
        return new Box(axle.x(), -half, 0, axle.x(), half, 0).moved(-body.x(), -body.y(), -body.z());
    }
}
