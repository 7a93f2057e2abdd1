package org.shelterwright.layouts.statement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Influence;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.MassModel;
import org.shelterwright.layouts.state.Mode;
import org.shelterwright.layouts.state.OccupiedSeat;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;
import org.shelterwright.layouts.statement.StateTotal.AxleTotal;

/** Totals of the filled body, the carrier and the trailer in each mode, with tanks low and no crew, and with all full. */
final class StateTotals {
    private final Scene scene;
    private final LoadStates states;
    private final MassModel model;

    StateTotals(Scene scene) {
        this.scene = scene;
        this.states = LoadStates.of(scene);
        this.model = new MassModel(scene.rules());
    }

    List<StateTotal> list() {
        List<StateTotal> totals = new ArrayList<>();
        for (Mode mode : states.modes()) {
            if (!mode.trailer()) {
                totals.add(body(mode, false));
                totals.add(body(mode, true));
            }
        }
        for (VehicleLoads vehicle : VehicleLoads.all(scene)) {
            for (Mode mode : vehicle.modes()) {
                totals.add(vehicle(vehicle, mode, false));
                totals.add(vehicle(vehicle, mode, true));
            }
        }
        return totals;
    }

    private StateTotal body(Mode mode, boolean full) {
        Quantity mass = Quantity.ofBody(Influence.MASS);
        return total(
                "Filled body",
                state(mode, full, false),
                new Sums(
                        mass,
                        Quantity.ofBody(Influence.MOMENT_X),
                        Quantity.ofBody(Influence.MOMENT_Y),
                        Quantity.ofBody(Influence.MOMENT_Z)),
                Point.ORIGIN,
                mode,
                full,
                inertia(mode, full),
                List.of());
    }

    private StateTotal vehicle(VehicleLoads vehicle, Mode mode, boolean full) {
        List<AxleTotal> axles = new ArrayList<>();
        for (int i = 0;
                i < vehicle.vehicle().axles().size() && vehicle.whyNoAxleLoads().isEmpty();
                i++) {
            Axle axle = vehicle.vehicle().axles().get(i);
            if (states.gaps(vehicle.wheelLoad(i, true)).isEmpty()) {
                axles.add(new AxleTotal(
                        axle.name(),
                        states.nominal(vehicle.wheelLoad(i, true), mode, full),
                        states.nominal(vehicle.wheelLoad(i, false), mode, full),
                        axle.ratingKg()));
            }
        }
        Point datum = vehicle.isTrailer() ? Point.ORIGIN : vehicle.vehicle().bodyAt();
        return total(
                vehicle.vehicle().name(),
                state(mode, full, true),
                new Sums(vehicle.mass(), vehicle.lengthMoment(), vehicle.sideMoment(), vehicle.heightMoment()),
                datum,
                mode,
                full,
                null,
                axles);
    }

    private record Sums(Quantity mass, Quantity x, Quantity y, Quantity z) {}

    private StateTotal total(
            String what,
            String state,
            Sums sums,
            Point datum,
            Mode mode,
            boolean full,
            @Nullable Inertia inertia,
            List<AxleTotal> axles) {
        boolean massKnown = states.gaps(sums.mass()).isEmpty();
        double mass = states.nominal(sums.mass(), mode, full);
        return new StateTotal(
                what,
                state,
                massKnown ? Double.valueOf(mass) : null,
                states.uncertaintyKg(sums.mass(), mode),
                states.uncertaintyRssKg(sums.mass(), mode),
                centre(sums.x(), mass, datum.x(), mode, full),
                centre(sums.y(), mass, datum.y(), mode, full),
                centre(sums.z(), mass, datum.z(), mode, full),
                inertia,
                axles);
    }

    private @Nullable Double centre(Quantity moment, double mass, int datum, Mode mode, boolean full) {
        return !states.gaps(moment).isEmpty() || mass == 0
                ? null
                : Double.valueOf(1000 * (states.nominal(moment, mode, full) / mass - Lengths.metres(datum)));
    }

    private String state(Mode mode, boolean full, boolean vehicle) {
        StringBuilder text = new StringBuilder(mode.onTheRoad() ? "on the road" : "on station");
        text.append(full ? ", tanks full" : ", tanks low");
        if (vehicle && scene.brief().crew() > 0) {
            text.append(full ? ", crew aboard" : ", no crew");
        }
        if (scene.brief().occupants().stream().anyMatch(one -> one.situation() == mode.situation())) {
            text.append(full ? ", everybody inside" : ", nobody inside");
        }
        if (vehicle && scene.trailer().isPresent()) {
            text.append(mode.trailer() ? ", trailer on" : ", trailer off");
        }
        return text.toString();
    }

    private @Nullable Inertia inertia(Mode mode, boolean full) {
        if (!states.gaps(Quantity.ofBody(Influence.MOMENT_X)).isEmpty()) {
            return null;
        }
        InertiaSum sum = new InertiaSum();
        MassData tare = scene.body().tare();
        add(
                sum,
                tare,
                Optional.ofNullable(tare.centre()).orElse(Point.ORIGIN),
                kg -> InertiaSum.ofShell(
                        kg, scene.body().outside(), scene.body().inside().box()));
        for (PlacedUnit unit : scene.units()) {
            Item item = unit.item();
            Pose pose = unit.pose(mode.situation());
            Point centre = Optional.ofNullable(item.mass().centre()).orElse(Point.ORIGIN);
            add(
                    sum,
                    item.mass(),
                    pose.apply(centre, item.size()),
                    kg -> InertiaSum.ofSolids(kg, unit.solids(mode.situation())));
            for (Tank tank : item.tanks()) {
                double kg = full ? tank.fullKg() : tank.leastKg();
                sum.add(kg, pose.apply(tank.centre(), item.size()), Inertia.NONE);
            }
        }
        for (OccupiedSeat seat : full ? OccupiedSeat.of(scene) : List.<OccupiedSeat>of()) {
            if (seat.situation() == mode.situation() && seat.missing() == null) {
                sum.add(seat.massKg(), seat.at(), Inertia.NONE);
            }
        }
        return sum.aboutCentre();
    }

    private interface OwnInertia {
        Inertia of(double massKg);
    }

    private void add(InertiaSum sum, MassData data, Point centre, OwnInertia own) {
        model.grownKg(data).ifPresent(kg -> sum.add(kg, centre, own.of(kg)));
    }
}
