package org.shelterwright.layouts.boltdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.BoltDownOrder.BroughtIn;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;

class BoltDownPlanTest {
    private final Layout layout =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
    private final Scene scene = Checker.standard().scene(layout);
    private final BoltDownPlan plan = BoltDownPlan.of(scene).orElseThrow();

    @Test
    void aLayoutWithoutOrderHasNoPlan() {
        assertThat(BoltDownPlan.of(Checker.standard().scene(layout.withBoltDown(null))))
                .isEmpty();
    }

    @Test
    void tellsWhereARackStandsAndHowItIsBolted() {
        BoltDownStep rack = plan.step("rack-1").orElseThrow();

        assertThat(rack.datums().stream().map(Datum::text))
                .containsExactly("1850 from the rear wall", "against the left wall");
        Bolting bolting = rack.boltings().get(0);
        assertThat(bolting.text()).isEqualTo("6 × M10, grade 8.8");
        assertThat(bolting.socketMm()).isEqualTo(16);
        assertThat(bolting.places()).extracting(Bolting.Place::number).containsExactly(1, 2, 3, 4, 5, 6);
        assertThat(bolting.places().get(0).into()).startsWith("floor raster, row ");
        assertThat(rack.tools()).contains("socket 16", "torque wrench to 20 N·m", "floor trolley");
        assertThat(StepWords.way(rack.passage()).get(0)).startsWith("in through the front emergency door: ");
    }

    @Test
    void torquesAreThoseOfTheRestraintSheetRoundedDown() {
        RestraintSheet sheet = RestraintSheet.of(scene);
        for (BoltDownStep step : plan.steps()) {
            List<Double> torques = sheet.groups().stream()
                    .filter(group -> group.unit().id().equals(step.unit().id()))
                    .flatMap(group -> group.fixings().stream())
                    .map(RestraintSheet.Line::torqueNm)
                    .toList();
            for (Bolting bolting : step.boltings()) {
                Double last = bolting.finalNm();
                Double first = bolting.firstNm();
                assertThat(last).as(step.unit().id()).isNotNull();
                assertThat(torques).as(step.unit().id()).anyMatch(one -> one != null && one >= last && one < last + 1);
                assertThat(first).isLessThanOrEqualTo(last / 2);
            }
        }
    }

    @Test
    void holdsBeforePowerOnAfterTheLastUnitWithPower() {
        List<BoltDownStep> held =
                plan.steps().stream().filter(step -> step.hold() != null).toList();

        assertThat(held).hasSize(1);
        assertThat(held.get(0).hold())
                .isEqualTo("Hold before power-on: all cables checked and signed, by a qualified person.");
        assertThat(plan.steps().subList(held.get(0).number(), plan.steps().size()))
                .noneMatch(step -> StepWords.powered(step.unit()));
    }

    @Test
    void everyCableInsideIsConnectedOnce() {
        long closed = plan.steps().stream()
                .flatMap(step -> step.cables().stream())
                .filter(CableTask::closed)
                .count();

        // All but the one that comes from the generator on the trailer.
        assertThat(closed).isEqualTo(layout.brief().wires().size() - 1);
        assertThat(plan.steps().stream()
                        .flatMap(step -> step.cables().stream())
                        .filter(one -> one.wire().equals("w9"))
                        .map(CableTask::text))
                .singleElement()
                .satisfies(
                        text -> assertThat(text)
                                .matches(
                                        "W9 .*, \\d+(\\.\\d)? m: connect at mains in, lay by .* to the entry panel for .*, output"));
    }

    /** A battery is live: at a wire from it to the wall, too, its own end is the last. */
    @Test
    void aWireFromABatteryToTheBodyIsConnectedAtTheBatteryLast() {
        List<Wire> wires = new ArrayList<>(layout.brief().wires());
        wires.removeIf(wire -> wire.id().equals("w4"));
        wires.add(new Wire("w4", "battery-box/battery", "body/supply entry", "battery-2x35", null));
        Layout changed = layout.withAsked(layout.brief().withWires(wires), layout.parts());

        BoltDownPlan other = BoltDownPlan.of(Checker.standard().scene(changed)).orElseThrow();

        assertThat(other.step("battery-box").orElseThrow().cables())
                .filteredOn(one -> one.wire().equals("w4"))
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.text())
                            .startsWith("W4 ")
                            .endsWith("connect at supply entry of the body, then at battery, the battery last");
                    assertThat(one.ends()).isEqualTo(2);
                });
    }

    @Test
    void anEndIsConnectedOnceAndAtBatteriesLast() {
        int ends = plan.steps().stream()
                .flatMap(step -> step.cables().stream())
                .mapToInt(CableTask::ends)
                .sum();
        // Both ends of all, but the far end of the one from the generator.
        assertThat(ends).isEqualTo(2 * layout.brief().wires().size() - 1);
        int battery = plan.step("battery-box").orElseThrow().number();
        List<CableTask> live = plan.steps().stream()
                .filter(step -> step.number() > battery)
                .flatMap(step -> step.cables().stream())
                .filter(task -> task.text().endsWith(" the battery last"))
                .toList();
        assertThat(live).isNotEmpty().allSatisfy(task -> {
            assertThat(task.ends()).isEqualTo(2);
            assertThat(task.text()).contains(" from step " + battery + " (Battery box");
        });
        assertThat(plan.steps().get(battery - 1).cables())
                .filteredOn(task -> !task.closed() && !task.earthing())
                .allSatisfy(task -> assertThat(task.ends()).isZero());
        double laid = plan.steps().stream()
                .flatMap(step -> step.cables().stream())
                .mapToDouble(CableTask::laidMetres)
                .sum();
        double cut = CableNet.of(scene).wires().stream()
                .mapToDouble(one -> one.cutLength() * 1e-6)
                .sum();
        assertThat(laid).as("each is laid once (m)").isCloseTo(cut, within(1e-6));
    }

    @Test
    void theKeyOfAJointChangesWithItsPlaceOnly() {
        BoltDownStep rack = plan.step("rack-1").orElseThrow();
        BoltDownPlan again = BoltDownPlan.of(Checker.standard().scene(layout)).orElseThrow();

        assertThat(PlanKey.joints(again.step("rack-1").orElseThrow())).isEqualTo(PlanKey.joints(rack));
        assertThat(PlanKey.joints(plan.step("rack-2").orElseThrow())).isNotEqualTo(PlanKey.joints(rack));
    }

    @Test
    void aCableIsLaidBeforeTheUnitThatWouldCoverItsTray() {
        // Racks up to the roof fill the trays over them, and a hand reaches 250 mm: rack 2 covers the tray of the wire
        // to rack 1.
        Map<String, Item> items = new HashMap<>(layout.parts().items());
        Item old = items.get("rack-19-34u");
        items.put(old.id(), upTo(layout.body().inside().z(), old));
        Parts parts = layout.parts();
        Map<String, Double> limits = new HashMap<>(layout.brief().limits());
        limits.put(Figure.TOOL_REACH.id(), 250.0);
        List<BroughtIn> steps = new ArrayList<>(layout.boltDown().steps());
        Collections.swap(
                steps,
                layout.boltDown().units().indexOf("rack-1"),
                layout.boltDown().units().indexOf("rack-2"));
        Layout changed = layout.withAsked(
                        layout.brief().withLimits(limits),
                        new Parts(parts.body(), parts.carrier(), parts.trailer(), items))
                .withBoltDown(layout.boltDown().withSteps(steps));

        BoltDownPlan covered =
                BoltDownPlan.of(Checker.standard().scene(changed)).orElseThrow();

        assertThat(covered.step("rack-2").orElseThrow().cables())
                .filteredOn(CableTask::first)
                .extracting(CableTask::wire)
                .contains("w1");
        assertThat(covered.step("rack-2").orElseThrow().cables().get(0).text())
                .startsWith("Before it comes in: W")
                .endsWith("both ends open; the tray is covered afterwards");
        assertThat(covered.step("rack-1").orElseThrow().cables())
                .anyMatch(task -> task.text().startsWith("W1 (laid): connect at power; the end for Power unit"));
        assertThat(plan.steps()).allMatch(step -> step.cables().stream().noneMatch(CableTask::first));
    }

    private static Item upTo(int height, Item old) {
        Size size = new Size(old.size().x(), old.size().y(), height);
        return old.but()
                .size(size)
                .solids(List.of(new Solid("block", size.box(), Presence.ALWAYS)))
                .zones(List.of())
                .movableParts(List.of())
                .patches(List.of())
                .supports(List.of())
                .stackingKg(null)
                .stowages(List.of())
                .tanks(List.of())
                .interior(null)
                .bringing(null)
                .note(null)
                .build();
    }
}
