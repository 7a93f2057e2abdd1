package org.shelterwright.layouts.brief;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of a layout.
 *
 * @param body id of the body
 * @param carrier id of the carrier; {@code null} if the body stands alone
 * @param trailer trailer that goes along; {@code null} if there is none
 * @param units the equipment list
 * @param crew people in the cab
 * @param occupants people inside the body, where it says that they work or ride there
 * @param ruleSets ids of the rule sets that apply; a later one overrides an earlier one
 * @param services states, supplies and who draws from them; {@code null} if nothing is asked of power and air
 * @param limits values that differ from those of the rule sets, by the id of their figure
 * @param inventory what goes into the units; {@code null} if it lists nothing
 */
public record Brief(
        String id,
        String name,
        String body,
        @Nullable String carrier,
        @Nullable Trailer trailer,
        List<UnitSpec> units,
        int crew,
        List<Occupant> occupants,
        List<Wish> wishes,
        List<String> ruleSets,
        Map<String, Double> limits,
        List<Wire> wires,
        @Nullable Services services,
        @Nullable Inventory inventory,
        @Nullable String note) {
    public Brief {
        units = List.copyOf(units);
        occupants = List.copyOf(occupants);
        wishes = List.copyOf(wishes);
        ruleSets = List.copyOf(ruleSets);
        limits = Collections.unmodifiableMap(new TreeMap<>(limits));
        wires = List.copyOf(wires);
        Set<String> seen = new HashSet<>();
        for (UnitSpec unit : units) {
            if (!seen.add(unit.id())) {
                throw new IllegalArgumentException(
                        "The unit id \"" + unit.id() + "\" is given twice. Rename one of them.");
            }
        }
    }

    /** A brief with nobody inside the body that asks nothing of power and air. */
    public Brief(
            String id,
            String name,
            String body,
            @Nullable String carrier,
            @Nullable Trailer trailer,
            List<UnitSpec> units,
            int crew,
            List<Wish> wishes,
            List<String> ruleSets,
            Map<String, Double> limits,
            List<Wire> wires,
            @Nullable String note) {
        this(id, name, body, carrier, trailer, units, crew, List.of(), wishes, ruleSets, limits, wires, null, null, note);
    }

    /** A brief that lists no pieces. */
    public Brief(
            String id,
            String name,
            String body,
            @Nullable String carrier,
            @Nullable Trailer trailer,
            List<UnitSpec> units,
            int crew,
            List<Occupant> occupants,
            List<Wish> wishes,
            List<String> ruleSets,
            Map<String, Double> limits,
            List<Wire> wires,
            @Nullable Services services,
            @Nullable String note) {
        this(
                id, name, body, carrier, trailer, units, crew, occupants, wishes, ruleSets, limits, wires, services,
                null, note);
    }

    /** The inventory, empty if the brief lists nothing. */
    public Inventory listed() {
        return inventory == null ? Inventory.NONE : inventory;
    }

    public Brief withInventory(@Nullable Inventory other) {
        return new Brief(
                id, name, body, carrier, trailer, units, crew, occupants, wishes, ruleSets, limits, wires, services,
                other, note);
    }

    public Brief withBody(String other) {
        return new Brief(
                id, name, other, carrier, trailer, units, crew, occupants, wishes, ruleSets, limits, wires, services,
                note);
    }

    public Brief withCarrier(@Nullable String other) {
        return new Brief(
                id, name, body, other, trailer, units, crew, occupants, wishes, ruleSets, limits, wires, services,
                note);
    }

    public Brief withTrailer(@Nullable Trailer other) {
        return new Brief(
                id, name, body, carrier, other, units, crew, occupants, wishes, ruleSets, limits, wires, services,
                inventory, note);
    }

    public Brief withUnits(List<UnitSpec> others) {
        return new Brief(
                id, name, body, carrier, trailer, others, crew, occupants, wishes, ruleSets, limits, wires, services,
                inventory, note);
    }

    public Brief withCrew(int people) {
        return new Brief(
                id, name, body, carrier, trailer, units, people, occupants, wishes, ruleSets, limits, wires, services,
                inventory, note);
    }

    public Brief withOccupants(List<Occupant> others) {
        return new Brief(
                id, name, body, carrier, trailer, units, crew, others, wishes, ruleSets, limits, wires, services, inventory, note);
    }

    public Brief withWishes(List<Wish> others) {
        return new Brief(
                id, name, body, carrier, trailer, units, crew, occupants, others, ruleSets, limits, wires, services,
                inventory, note);
    }

    public Brief withRuleSets(List<String> others) {
        return new Brief(
                id, name, body, carrier, trailer, units, crew, occupants, wishes, others, limits, wires, services,
                inventory, note);
    }

    public Brief withLimits(Map<String, Double> others) {
        return new Brief(
                id, name, body, carrier, trailer, units, crew, occupants, wishes, ruleSets, others, wires, services,
                inventory, note);
    }

    public Brief withWires(List<Wire> others) {
        return new Brief(
                id, name, body, carrier, trailer, units, crew, occupants, wishes, ruleSets, limits, others, services,
                inventory, note);
    }

    public Brief withServices(@Nullable Services others) {
        return new Brief(
                id, name, body, carrier, trailer, units, crew, occupants, wishes, ruleSets, limits, wires, others, inventory,
                note);
    }
}
