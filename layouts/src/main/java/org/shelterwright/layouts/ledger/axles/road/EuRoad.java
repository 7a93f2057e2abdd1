package org.shelterwright.layouts.ledger.axles.road;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mass.LoadRow;
import org.shelterwright.layouts.rules.RuleSet.AxleRules;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * Directive 96/53/EC, Annex I: axles, tandem and tri-axles by distance, gross mass by axle count, mass of a combination, outside
 * sizes. The share of the driving axles is a figure of its rule set.
 *
 * <p>Axles less than 1.8 m apart belong together. In a group with unequal distances the least one sets the class.
 */
final class EuRoad extends RoadRules {
    private static final Source ANNEX = Source.quoted("Directive 96/53/EC", "Annex I");

    EuRoad() {
        super(
                "axles.road-eu",
                AxleRules.EU_96_53,
                "Road rules of Directive 96/53/EC",
                ANNEX,
                "Directive 96/53/EC is not chosen, or the brief names no carrier.");
    }

    @Override
    void assessChosen(Scene scene, Rows rows) {
        for (VehicleLoads vehicle : VehicleLoads.all(scene)) {
            for (List<RoadAxle> group : groups(RoadAxle.of(vehicle))) {
                rows.add(group(rows, scene, vehicle, group));
            }
            gross(rows, scene, vehicle);
            sizes(rows, scene, vehicle);
        }
        combination(rows, scene);
    }

    /** Axles less than 1.8 m behind each other. */
    static List<List<RoadAxle>> groups(List<RoadAxle> axles) {
        List<List<RoadAxle>> groups = new ArrayList<>();
        for (RoadAxle axle : axles) {
            List<RoadAxle> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            if (!last.isEmpty() && last.get(last.size() - 1).before(axle) < Directive9653.TANDEM) {
                last.add(axle);
            } else {
                groups.add(new ArrayList<>(List.of(axle)));
            }
        }
        return groups;
    }

    private Row group(Rows rows, Scene scene, VehicleLoads vehicle, List<RoadAxle> group) {
        boolean motor = !vehicle.isTrailer();
        String what = RoadAxle.names(group) + " of " + vehicle.vehicle().name();
        RowDraft draft = rows.draft(this, "96/53/EC: " + what);
        int least = Integer.MAX_VALUE;
        for (int i = 1; i < group.size(); i++) {
            least = Math.min(least, group.get(i - 1).before(group.get(i)));
        }
        OptionalDouble allowed = switch (group.size()) {
            case 1 ->
                OptionalDouble.of(Directive9653.singleAxleKg(group.get(0).axle().driven()));
            case 2 -> OptionalDouble.of(Directive9653.tandemKg(motor, least, higher(scene, vehicle, group)));
            case 3 ->
                motor || widest(group) > Directive9653.TRI_AXLE
                        ? OptionalDouble.empty()
                        : Directive9653.triAxleKg(least);
            default -> OptionalDouble.empty();
        };
        return allowed.isEmpty()
                ? draft.notAssessed("Annex I names no group like " + what + "; see the national rules.")
                : LoadRow.atMost(
                        draft,
                        scene,
                        RoadAxle.load(group),
                        vehicle.roadModes(),
                        allowed.getAsDouble(),
                        (group.size() == 1 ? "The axle " : "The axles ")
                                + what
                                + (group.size() == 1 ? " bears" : " bear"),
                        "");
    }

    private static int widest(List<RoadAxle> group) {
        int widest = 0;
        for (int i = 1; i < group.size(); i++) {
            widest = Math.max(widest, group.get(i - 1).before(group.get(i)));
        }
        return widest;
    }

    /**
     * Whether the driving axles have twin tyres and air suspension, or twin tyres and at most 9.5 t each (points 2.3.2, 2.3.3 and
     * 3.5.3).
     */
    private static boolean higher(Scene scene, VehicleLoads vehicle, List<RoadAxle> axles) {
        LoadStates states = LoadStates.of(scene);
        boolean any = false;
        for (RoadAxle one : axles) {
            Axle axle = one.axle();
            if (axle.driven()) {
                boolean light = states.gaps(one.load()).isEmpty()
                        && states.most(one.load(), vehicle.roadModes()).worst() <= Directive9653.TWIN_TYRES_KG;
                if (!axle.twin() || !(axle.airSuspension() || light)) {
                    return false;
                }
                any = true;
            }
        }
        return any;
    }

    private void gross(Rows rows, Scene scene, VehicleLoads vehicle) {
        List<RoadAxle> axles = RoadAxle.of(vehicle);
        String name = vehicle.vehicle().name();
        RowDraft draft = rows.draft(this, "96/53/EC: gross mass of " + name);
        if (vehicle.isTrailer()) {
            // Annex I names trailers with two and three axles only; what others may weigh follows from their axles.
            OptionalDouble allowed = Directive9653.trailerKg(axles.size());
            if (allowed.isPresent()) {
                rows.add(LoadRow.atMost(
                        draft,
                        scene,
                        vehicle.mass(),
                        vehicle.roadModes(),
                        allowed.getAsDouble(),
                        "The trailer " + name + " weighs",
                        ""));
            }
            return;
        }
        int steered = (int) axles.stream().filter(one -> one.axle().steered()).count();
        int distance = axles.get(0).before(axles.get(axles.size() - 1));
        OptionalDouble allowed =
                Directive9653.motorVehicleKg(axles.size(), steered, distance, higher(scene, vehicle, axles));
        rows.add(
                allowed.isEmpty()
                        ? draft.notAssessed("Annex I names no motor vehicle with " + axles.size() + " axles, " + steered
                                + " of them steered, and these tyres and springs; see the national rules.")
                        : LoadRow.atMost(
                                draft,
                                scene,
                                vehicle.mass(),
                                vehicle.roadModes(),
                                allowed.getAsDouble(),
                                "The laden " + name + " weighs",
                                ""));
    }

    private void combination(Rows rows, Scene scene) {
        int axles = VehicleLoads.all(scene).stream()
                .mapToInt(one -> one.vehicle().axles().size())
                .sum();
        if (VehicleLoads.trailer(scene).isEmpty() || axles < 4) {
            return;
        }
        RowDraft draft = rows.draft(this, "96/53/EC: mass of the combination");
        if (axles == 4) {
            draft.source(Source.fromMemory("Directive 96/53/EC", "Annex I, 2.2.3"));
        }
        VehicleLoads.combination(scene)
                .ifPresent(mass -> rows.add(LoadRow.atMost(
                        draft,
                        scene,
                        mass,
                        LoadStates.of(scene).drawnModes(),
                        axles == 4 ? Directive9653.FOUR_AXLE_COMBINATION_KG : Directive9653.FIVE_AXLE_COMBINATION_KG,
                        "Carrier and trailer weigh",
                        "")));
    }

    private void sizes(Rows rows, Scene scene, VehicleLoads vehicle) {
        Outside outside = Outside.of(scene, vehicle);
        String name = vehicle.vehicle().name();
        rows.add(size(
                rows.draft(this, "96/53/EC: length of " + name),
                outside.length(),
                Directive9653.LENGTH_MM,
                name + " is long",
                null));
        rows.add(size(
                rows.draft(this, "96/53/EC: width of " + name),
                outside.width(),
                Directive9653.WIDTH_MM,
                name + " is wide",
                null));
        if (outside.height() > 0) {
            rows.add(size(
                    rows.draft(this, "96/53/EC: height of " + name),
                    outside.height(),
                    Directive9653.HEIGHT_MM,
                    name + " is high",
                    null));
        }
        if (vehicle.isTrailer()) {
            roadTrain(rows, scene, outside);
        }
    }

    private void roadTrain(Rows rows, Scene scene, Outside trailer) {
        VehicleLoads.carrier(scene).ifPresent(carrier -> {
            int length = trailer.length() + Outside.of(scene, carrier).length();
            RowDraft draft = rows.draft(this, "96/53/EC: length of the road train");
            rows.add(
                    length / 1000.0 > Directive9653.ROAD_TRAIN_MM
                            ? draft.notAssessed("Carrier and trailer one after the other are " + length / 1000
                                    + " mm long; measure the coupled road train, of which 18750 mm are allowed.")
                            : size(
                                    draft,
                                    length,
                                    Directive9653.ROAD_TRAIN_MM,
                                    "Carrier and trailer are at most",
                                    null));
        });
    }
}
