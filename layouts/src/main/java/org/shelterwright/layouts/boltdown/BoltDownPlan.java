package org.shelterwright.layouts.boltdown;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.handling.Carried;
import org.shelterwright.layouts.handling.Carrying;
import org.shelterwright.layouts.handling.Handling;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.Passage;
import org.shelterwright.layouts.ways.UnitWays;

/**
 * The steps of the order of a layout, all derived from layout and rules.
 *
 * @param leftOut placed units that the order leaves out
 */
public record BoltDownPlan(BoltDownOrder order, List<BoltDownStep> steps, List<PlacedUnit> leftOut) {
    private static final String POWER_ON =
            "Hold before power-on: all cables checked and signed, by a qualified person.";

    public BoltDownPlan {
        steps = List.copyOf(steps);
        leftOut = List.copyOf(leftOut);
    }

    /** The plan of a scene; empty if its layout holds no order. Cost: one way for each unit. */
    public static Optional<BoltDownPlan> of(Scene scene) {
        BoltDownOrder order = scene.layout().boltDown();
        return order == null
                ? Optional.empty()
                : Optional.of(scene.derived(BoltDownPlan.class, any -> new Maker(scene, order).plan()));
    }

    /** The step of a unit, if it has one. */
    public Optional<BoltDownStep> step(String unit) {
        return steps.stream().filter(one -> one.unit().id().equals(unit)).findFirst();
    }

    /** Makes the steps one after the other. */
    private static final class Maker {
        private final Scene scene;
        private final BoltDownOrder order;
        private final UnitWays ways;
        private final Carrying carrying;
        private final Map<Integer, List<LaidWire>> layFirst;
        private final Set<String> laid = new HashSet<>();
        private final BitSet gone = new BitSet();
        /** Numbers of the steps of what is in, by unit. */
        private final Map<String, Integer> in = new HashMap<>();

        private final StepTimes times;
        private final List<BoltDownStep> steps = new ArrayList<>();

        Maker(Scene scene, BoltDownOrder order) {
            this.scene = scene;
            this.order = order;
            this.ways = new UnitWays(scene);
            this.carrying = new Carrying(scene);
            this.times = new StepTimes(scene.rules());
            this.layFirst = LayFirst.by(scene, order);
        }

        BoltDownPlan plan() {
            gone.set(0, scene.units().size());
            List<BoltDownOrder.BroughtIn> placed = order.steps().stream()
                    .filter(one -> scene.unit(one.unit()).isPresent())
                    .toList();
            int lastPowered = -1;
            for (int i = 0; i < placed.size(); i++) {
                if (StepWords.powered(scene.unit(placed.get(i).unit()).orElseThrow())) {
                    lastPowered = i;
                }
            }
            boolean panel = false;
            for (int i = 0; i < placed.size(); i++) {
                BoltDownOrder.BroughtIn one = placed.get(i);
                Passage passage = passage(one);
                boolean byPanel = byPanel(passage);
                boolean laterByPanel = byPanel && i == lastOf(placed, i);
                panel |= byPanel;
                steps.add(step(i + 1, passage, i == lastPowered, laterByPanel));
                in.put(one.unit(), i + 1);
                gone.clear(passage.unit().index());
            }
            List<PlacedUnit> left = scene.units().stream()
                    .filter(unit -> !in.containsKey(unit.id()))
                    .toList();
            return new BoltDownPlan(order, steps, left);
        }

        private int lastOf(List<BoltDownOrder.BroughtIn> placed, int from) {
            int last = from;
            BitSet later = (BitSet) gone.clone();
            for (int i = from; i < placed.size(); i++) {
                PlacedUnit unit = scene.unit(placed.get(i).unit()).orElseThrow();
                last = byPanel(ways.out(unit, later)) ? i : last;
                later.clear(unit.index());
            }
            return last;
        }

        private static boolean byPanel(Passage passage) {
            Opening opening = passage.opening();
            return opening != null && opening.kind() == Opening.Kind.REMOVABLE_PANEL;
        }

        private Passage passage(BoltDownOrder.BroughtIn one) {
            PlacedUnit unit = scene.unit(one.unit()).orElseThrow();
            Optional<Opening> wished = UnitWays.openings(scene.body()).stream()
                    .filter(opening -> opening.name().equals(one.opening()))
                    .findFirst();
            if (wished.isPresent() && ways.alone(unit).free()) {
                Passage through = ways.through(unit, wished.get(), gone);
                if (through.free()) {
                    return through;
                }
            }
            return ways.shortest(unit, gone);
        }

        private BoltDownStep step(int number, Passage passage, boolean lastPowered, boolean lastByPanel) {
            PlacedUnit unit = passage.unit();
            List<Bolting> boltings = Bolting.of(scene, unit);
            Carried carried = carrying.of(unit, passage.apart());
            Handling handling = carried.handling();
            List<CableTask> cables = new ArrayList<>();
            for (LaidWire wire : layFirst.getOrDefault(unit.index(), List.of())) {
                cables.add(CableTask.layFirst(scene, wire));
                laid.add(wire.wire().id());
            }
            cables.addAll(CableTask.of(scene, unit, in, laid));
            List<StepCheck> checks = StepChecks.of(scene, unit, boltings, cables, passage, carried);
            List<String> cautions = handling == null
                    ? List.of("Mass not known: weigh it before anybody lifts it.")
                    : StepWords.cautions(unit, passage, handling, StepWords.powered(unit));
            List<Datum> datums = Datum.of(scene, unit);
            return new BoltDownStep(
                    number,
                    unit,
                    host(unit),
                    passage,
                    datums,
                    boltings,
                    StepTools.of(unit, boltings, cables, carried),
                    carried,
                    cables,
                    checks,
                    cautions,
                    hold(lastPowered, lastByPanel),
                    times.bench(carried),
                    times.in(passage, handling),
                    times.atPlace(boltings, cables, checks, carried));
        }

        private @Nullable String host(PlacedUnit unit) {
            String host = unit.place(Situation.ON_STATION).host();
            return host == null ? null : scene.unit(host).map(PlacedUnit::name).orElse(host);
        }

        private static @Nullable String hold(boolean lastPowered, boolean lastByPanel) {
            if (lastByPanel) {
                String close =
                        "Hold before the panel is closed: everything behind it checked and signed by a second person.";
                return lastPowered ? close + " " + POWER_ON : close;
            }
            return lastPowered ? POWER_ON : null;
        }
    }
}
