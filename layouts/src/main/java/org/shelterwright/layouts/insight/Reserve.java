package org.shelterwright.layouts.insight;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.racks.FilledBay;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.scene.Scene;

/**
 * What is left of something that is used up: mass on an axle, load on a zone of the floor, current of a supply, height units.
 *
 * @param subject what it belongs to
 * @param title such as "Rear axle"
 * @param state the load state that governs; empty if there is none
 * @param left below zero if too much is taken
 * @param capacity the whole
 * @param unit of both
 */
public record Reserve(Subject subject, String title, String state, double left, double capacity, String unit) {
    private static final List<String> LIMITS = List.of(
            "mass.body-gross",
            "mass.vehicle-gross",
            "axles.axle-load",
            "axles.gross-limit",
            "axles.combination",
            "axles.coupling-load",
            "floor.uniform",
            "floor.per-metre",
            "power.supply-load",
            "power.generator",
            "heat.cooling");

    /** The reserves of a layout, in the order of the subjects, the tightest first in each. */
    static List<Reserve> of(Scene scene, Ledger ledger) {
        List<Reserve> reserves = new ArrayList<>();
        for (String limit : LIMITS) {
            for (Row row : ledger.of(limit)) {
                Double demand = row.demand();
                Double capacity = row.capacity();
                if (row.verdict() != Verdict.NOT_ASSESSED
                        && !row.doesNotApply()
                        && row.sense() == Row.Sense.AT_MOST
                        && demand != null
                        && capacity != null) {
                    reserves.add(new Reserve(
                            row.subject(), row.title(), row.state(), capacity - demand, capacity, row.unit()));
                    power(scene, row, capacity - demand, capacity, reserves);
                }
            }
        }
        for (FilledBay bay : FilledBay.of(scene)) {
            int taken =
                    bay.working().stream().mapToInt(one -> one.mount().units()).sum();
            int units = bay.bay().units();
            reserves.add(
                    new Reserve(Subject.RACKS, bay.name() + ", blanks counted free", "", units - taken, units, "U"));
        }
        return reserves;
    }

    /** What is left of a current, as power at the voltage of the supply (all lines alike). */
    private static void power(Scene scene, Row row, double leftA, double capacityA, List<Reserve> reserves) {
        if (!row.limit().equals("power.supply-load") || !row.unit().equals("A")) {
            return;
        }
        PowerNet.of(scene).services().supplies().stream()
                .filter(supply -> row.title().equals("Load of " + supply.name()))
                .findFirst()
                .ifPresent(supply -> {
                    double volts = supply.voltageV() * supply.lines();
                    reserves.add(new Reserve(
                            row.subject(), row.title(), row.state(), leftA * volts, capacityA * volts, "W"));
                });
    }
}
