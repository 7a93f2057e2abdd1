package org.shelterwright.layouts.revision;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.scene.Scene;

/**
 * Two revisions of a layout, each checked from scratch, and what differs.
 *
 * @param units that stand elsewhere, weigh otherwise, are new or gone
 * @param reshaped names of units whose item is of another size, shape or kind
 */
public record Revision(
        Scene before,
        Scene after,
        Ledger ledgerBefore,
        Ledger ledgerAfter,
        Reuse reuse,
        List<UnitShift> units,
        List<String> reshaped,
        List<WireShift> wires,
        List<LimitShift> limits,
        List<StepShift> steps) {
    public Revision {
        units = List.copyOf(units);
        reshaped = List.copyOf(reshaped);
        wires = List.copyOf(wires);
        limits = List.copyOf(limits);
        steps = List.copyOf(steps);
    }

    /** Checks both layouts and compares them. */
    public static Revision of(Checker checker, Layout before, Layout after) {
        Scene old = checker.scene(before);
        Scene now = checker.scene(after);
        Ledger oldLedger = checker.check(before);
        Ledger nowLedger = checker.check(after);
        return new Revision(
                old,
                now,
                oldLedger,
                nowLedger,
                Reuse.of(old, now),
                UnitShift.between(old, now),
                reshaped(old, now),
                WireShift.between(old, now),
                LimitShift.between(oldLedger, nowLedger),
                StepShift.between(old, now));
    }

    private static List<String> reshaped(Scene before, Scene after) {
        List<String> names = new ArrayList<>();
        after.units()
                .forEach(unit -> before.unit(unit.id())
                        .filter(old -> !old.item().withMass(unit.item().mass()).equals(unit.item()))
                        .ifPresent(old -> names.add(unit.name())));
        return names;
    }

    /** Whether nothing differs that anybody would build or read otherwise. */
    public boolean same() {
        return units.isEmpty() && reshaped.isEmpty() && wires.isEmpty() && limits.isEmpty() && steps.isEmpty();
    }

    /** The documents that are to be issued again, each with the reason. */
    public List<Reissue> reissues() {
        List<Reissue> list = new ArrayList<>();
        boolean placed = !units.isEmpty() || !reshaped.isEmpty();
        boolean heavier = units.stream().anyMatch(one -> one.massKg() == null || one.massKg() != 0) || placed;
        add(list, placed, "General arrangement drawing, pictures, 3D model", count(units.size(), "unit"));
        add(list, !limits.isEmpty(), "Ledger", count(limits.size(), "limit"));
        add(list, heavier, "Mass statement", "masses or their places");
        add(list, subject(Subject.RESTRAINT), "Restraint sheet", "restraint rows");
        add(list, subject(Subject.LIFTING), "Lifting sheet", "lifting rows");
        add(list, subject(Subject.POWER), "Electrical load list", "power rows");
        add(list, subject(Subject.HEAT), "Heat balance", "heat rows");
        add(
                list,
                !wires.isEmpty(),
                "Cable schedule, cut list, tray fill, wiring overview",
                count(wires.size(), "wire"));
        add(list, !steps.isEmpty(), "Work pack", count(steps.size(), "step"));
        add(
                list,
                subject(Subject.RACKS) || subject(Subject.STOWAGE) || !reshaped.isEmpty(),
                "Rack elevations, stowage list, labels",
                "what is inside the units, or their size");
        add(list, heavier, "Load sheets of journeys with it", "mass or centre of mass");
        return list;
    }

    private boolean subject(Subject subject) {
        return limits.stream().anyMatch(one -> {
            var row = one.second() == null ? one.first() : one.second();
            return row != null && row.subject() == subject;
        });
    }

    private static void add(List<Reissue> list, boolean needed, String document, String why) {
        if (needed) {
            list.add(new Reissue(document, why));
        }
    }

    private static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /**
     * A document to issue again.
     *
     * @param why what in it differs
     */
    public record Reissue(String document, String why) {}
}
