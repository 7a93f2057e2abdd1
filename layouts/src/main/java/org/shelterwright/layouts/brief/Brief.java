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

    /** Begins a brief that asks for nothing yet. */
    public static BriefBuilder named(String id, String name, String body) {
        return new BriefBuilder(id, name, body);
    }

    /** Begins a copy of which some parts differ. */
    public BriefBuilder but() {
        return new BriefBuilder(this);
    }

    /** The inventory, empty if the brief lists nothing. */
    public Inventory listed() {
        return inventory == null ? Inventory.NONE : inventory;
    }

    public Brief withInventory(@Nullable Inventory other) {
        return but().inventory(other).build();
    }

    public Brief withBody(String other) {
        return but().body(other).build();
    }

    public Brief withCarrier(@Nullable String other) {
        return but().carrier(other).build();
    }

    public Brief withTrailer(@Nullable Trailer other) {
        return but().trailer(other).build();
    }

    public Brief withUnits(List<UnitSpec> others) {
        return but().units(others).build();
    }

    public Brief withCrew(int people) {
        return but().crew(people).build();
    }

    public Brief withOccupants(List<Occupant> others) {
        return but().occupants(others).build();
    }

    public Brief withWishes(List<Wish> others) {
        return but().wishes(others).build();
    }

    public Brief withRuleSets(List<String> others) {
        return but().ruleSets(others).build();
    }

    public Brief withLimits(Map<String, Double> others) {
        return but().limits(others).build();
    }

    public Brief withWires(List<Wire> others) {
        return but().wires(others).build();
    }

    public Brief withServices(@Nullable Services others) {
        return but().services(others).build();
    }
}
