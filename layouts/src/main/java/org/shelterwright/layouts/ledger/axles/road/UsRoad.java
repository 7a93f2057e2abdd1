package org.shelterwright.layouts.ledger.axles.road;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mass.GapRow;
import org.shelterwright.layouts.ledger.mass.LoadRow;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.RuleSet.AxleRules;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * 23 CFR 658.17: 20 000 lb on an axle, 34 000 lb on a tandem (axles more than 40 and at most 96 in apart), 80 000 lb gross, and
 * the bridge formula over every group of two or more consecutive axles, trailer included; the group that uses most of what it
 * may bear is shown. Width by 23 CFR 658.15.
 */
final class UsRoad extends RoadRules {
    private static final Source AXLES = Source.seen("23 CFR 658.17", "(c), (d)");
    private static final Source GROSS = Source.quoted("23 CFR 658.17", "(b)");
    private static final Source BRIDGE = Source.seen("23 CFR 658.17", "(e)");
    private static final Source WIDTH = Source.fromMemory("23 CFR 658.15", "(a)");
    private static final double WIDTH_MM = 102 * 25.4;
    private static final int FOUR_AXLES = 4;

    UsRoad() {
        super(
                "axles.road-us",
                AxleRules.US_23_CFR_658,
                "Road rules of 23 CFR 658",
                BRIDGE,
                "23 CFR 658 is not chosen, or the brief names no carrier.");
    }

    @Override
    void assessChosen(Scene scene, Rows rows) {
        List<RoadAxle> axles = RoadAxle.combination(scene);
        for (RoadAxle axle : axles) {
            rows.add(load(rows, scene, List.of(axle), BridgeFormula.SINGLE_LB, AXLES));
        }
        for (int i = 1; i < axles.size(); i++) {
            int distance = axles.get(i - 1).before(axles.get(i));
            if (distance <= 96 * BridgeFormula.INCH) {
                int allowed = distance > 40 * BridgeFormula.INCH ? BridgeFormula.TANDEM_LB : BridgeFormula.SINGLE_LB;
                rows.add(load(rows, scene, axles.subList(i - 1, i + 1), allowed, AXLES));
            }
        }
        VehicleLoads.combination(scene)
                .ifPresent(mass -> rows.add(LoadRow.atMost(
                        rows.draft(this, "23 CFR 658: gross mass").source(GROSS),
                        scene,
                        mass,
                        LoadStates.of(scene).roadModes(),
                        BridgeFormula.GROSS_LB * BridgeFormula.KG_PER_LB,
                        "The laden " + vehicles(axles) + " weigh",
                        lb(BridgeFormula.GROSS_LB))));
        rows.add(bridge(rows, scene, axles));
        for (VehicleLoads vehicle : VehicleLoads.all(scene)) {
            String name = vehicle.vehicle().name();
            rows.add(size(
                    rows.draft(this, "23 CFR 658: width of " + name),
                    Outside.of(scene, vehicle).width(),
                    WIDTH_MM,
                    name + " is wide",
                    WIDTH));
        }
    }

    private Row load(Rows rows, Scene scene, List<RoadAxle> group, int allowedLb, Source source) {
        String what = RoadAxle.names(group) + " of " + vehicles(group);
        return LoadRow.atMost(
                rows.draft(this, "23 CFR 658: " + what).source(source),
                scene,
                RoadAxle.load(group),
                group.get(group.size() - 1).vehicle().roadModes(),
                allowedLb * BridgeFormula.KG_PER_LB,
                (group.size() == 1 ? "The axle " : "The axles ") + what + (group.size() == 1 ? " bears" : " bear"),
                lb(allowedLb));
    }

    private Row bridge(Rows rows, Scene scene, List<RoadAxle> axles) {
        LoadStates states = LoadStates.of(scene);
        RowDraft draft = rows.draft(this, "23 CFR 658: bridge formula");
        List<Gap> gaps = new ArrayList<>();
        List<RoadAxle> worst = null;
        double worstUse = Double.NEGATIVE_INFINITY;
        for (int from = 0; from < axles.size(); from++) {
            for (int to = from + 2; to <= axles.size(); to++) {
                List<RoadAxle> group = axles.subList(from, to);
                Quantity load = RoadAxle.load(group);
                gaps.addAll(states.gaps(load));
                Extreme most =
                        states.most(load, group.get(group.size() - 1).vehicle().roadModes());
                double use = most.worst() / allowedLb(group);
                if (use > worstUse) {
                    worst = group;
                    worstUse = use;
                }
            }
        }
        if (worst == null) {
            return draft.notAssessed("There is no group of two axles.");
        }
        if (!gaps.isEmpty()) {
            return GapRow.of(draft, gaps.stream().distinct().toList());
        }
        int allowed = allowedLb(worst);
        int distance = worst.get(0).before(worst.get(worst.size() - 1));
        return LoadRow.atMost(
                draft,
                scene,
                RoadAxle.load(worst),
                worst.get(worst.size() - 1).vehicle().roadModes(),
                allowed * BridgeFormula.KG_PER_LB,
                "The " + worst.size() + " axles " + RoadAxle.names(worst) + " of " + vehicles(worst) + ", "
                        + Amounts.mm(distance * 1e-6) + " apart, bear",
                lb(allowed));
    }

    /** The formula with the exception for two consecutive tandems. */
    static int allowedLb(List<RoadAxle> group) {
        int distance = group.get(0).before(group.get(group.size() - 1));
        int allowed = BridgeFormula.allowedLb(distance, group.size());
        boolean twoTandems = group.size() == FOUR_AXLES
                && distance >= 36 * BridgeFormula.FOOT
                && tandem(group.get(0), group.get(1))
                && tandem(group.get(2), group.get(3));
        return twoTandems ? Math.max(allowed, BridgeFormula.TWO_TANDEMS_LB) : allowed;
    }

    private static boolean tandem(RoadAxle front, RoadAxle behind) {
        int distance = front.before(behind);
        return distance > 40 * BridgeFormula.INCH && distance <= 96 * BridgeFormula.INCH;
    }

    private static String lb(int lb) {
        return " (" + lb + " lb)";
    }
}
