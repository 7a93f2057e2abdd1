package org.shelterwright.layouts.scene;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.inside.Interiors;
import org.shelterwright.layouts.inside.UnitMass;
import org.shelterwright.layouts.inside.UnitMasses;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.rules.Rules;

/** A layout resolved for checking, with the rules that apply. Immutable; shares unmoved units with its predecessor. */
public final class Scene {
    private final Layout layout;
    private final Rules rules;
    private final List<PlacedUnit> units;
    private final Map<String, PlacedUnit> byId;
    private final List<UnitSpec> toPlace;
    private final Inside inside;
    private final Kept kept = new Kept();
    private final Kept steady;

    /** What does not depend on where the units are. */
    private record Inside(Interiors interiors, Map<String, UnitMass> masses, WiredPorts wired) {
        static Inside of(Layout layout, Rules rules) {
            Interiors interiors = Interiors.of(layout);
            return new Inside(interiors, UnitMasses.of(layout, interiors, rules), WiredPorts.of(layout, rules));
        }

        UnitMass mass(UnitSpec spec, Item item) {
            UnitMass own = masses.get(spec.id());
            return own == null ? UnitMass.of(item.mass()) : own;
        }

        PlacedUnit placed(int index, UnitSpec spec, Item item, UnitMass mass, Placement placement) {
            return new PlacedUnit(index, spec, item, mass, wired.of(spec), placement);
        }
    }

    private Scene(
            Layout layout, Rules rules, Inside inside, List<PlacedUnit> units, List<UnitSpec> toPlace, Kept steady) {
        this.layout = layout;
        this.inside = inside;
        this.rules = rules;
        this.units = List.copyOf(units);
        this.toPlace = List.copyOf(toPlace);
        this.steady = steady;
        this.byId = new HashMap<>();
        units.forEach(unit -> byId.put(unit.id(), unit));
    }

    /** Resolves a layout. Cost: linear in its solids and zones. */
    public static Scene of(Layout layout, Rules rules) {
        Inside inside = Inside.of(layout, rules);
        List<PlacedUnit> units = new ArrayList<>();
        List<UnitSpec> toPlace = new ArrayList<>();
        for (UnitSpec spec : layout.brief().units()) {
            Placement placement = layout.placements().get(spec.id());
            if (placement == null) {
                toPlace.add(spec);
            } else {
                Item item = layout.item(spec);
                units.add(inside.placed(units.size(), spec, item, inside.mass(spec, item), placement));
            }
        }
        return new Scene(layout, rules, inside, units, toPlace, new Kept());
    }

    /**
     * The scene after one placed unit has moved. Cost: the moved unit only, plus copying two lists.
     *
     * @throws IllegalArgumentException if the unit is not placed in this scene
     */
    public Scene with(Placement placement) {
        PlacedUnit old = unit(placement.unit())
                .orElseThrow(() -> new IllegalArgumentException(
                        "The unit \"" + placement.unit() + "\" is not placed and so cannot be moved."));
        List<PlacedUnit> changed = new ArrayList<>(units);
        changed.set(old.index(), inside.placed(old.index(), old.spec(), old.item(), old.mass(), placement));
        return new Scene(layout.with(placement), rules, inside, changed, toPlace, steady);
    }

    /**
     * The scene of another layout with the same brief and parts; units whose placement and mass did not change are shared, so
     * that a live ledger can tell what moved. Cost: the changed units, plus copying the lists.
     *
     * @throws IllegalArgumentException if brief or parts differ
     */
    public Scene after(Layout changed) {
        if (changed.brief() != layout.brief() || changed.parts() != layout.parts()) {
            throw new IllegalArgumentException("Only a layout with the same brief and parts can share units.");
        }
        Inside now = changed.contents() == layout.contents() ? inside : Inside.of(changed, rules);
        List<PlacedUnit> placed = new ArrayList<>();
        List<UnitSpec> unplaced = new ArrayList<>();
        for (UnitSpec spec : changed.brief().units()) {
            Placement placement = changed.placements().get(spec.id());
            if (placement == null) {
                unplaced.add(spec);
                continue;
            }
            int index = placed.size();
            PlacedUnit old = byId.get(spec.id());
            Item item = changed.item(spec);
            UnitMass mass = now.mass(spec, item);
            boolean same = old != null
                    && old.index() == index
                    && old.placement().equals(placement)
                    && old.mass().equals(mass);
            placed.add(same ? old : now.placed(index, spec, item, mass, placement));
        }
        return new Scene(changed, rules, now, placed, unplaced, steady);
    }

    /** What is inside the units. */
    public Interiors interiors() {
        return inside.interiors();
    }

    /** The item of a unit, placed or not, with the mass that it has in a situation with what is in it. */
    public Item filled(UnitSpec spec, Situation situation) {
        Item item = layout.item(spec);
        UnitMass own = inside.masses().get(spec.id());
        return own == null ? item : item.withMass(own.in(situation));
    }

    public Layout layout() {
        return layout;
    }

    public Brief brief() {
        return layout.brief();
    }

    public Rules rules() {
        return rules;
    }

    public Body body() {
        return layout.body();
    }

    public Optional<Carrier> carrier() {
        return layout.carrier();
    }

    /** Carrier entry of the trailer, if one goes along. */
    public Optional<Carrier> trailer() {
        return Optional.ofNullable(layout.parts().trailer());
    }

    /** The placed units, in the order of the brief. */
    public List<PlacedUnit> units() {
        return units;
    }

    /** The units that have no place yet. */
    public List<UnitSpec> toPlace() {
        return toPlace;
    }

    /**
     * The units that rest on or under any of the given ones in any situation, in any number of steps, with those given;
     * all by index. Cost: the number of units times the longest chain.
     */
    public BitSet guestsOf(BitSet hosts) {
        BitSet found = (BitSet) hosts.clone();
        boolean more = true;
        while (more) {
            more = false;
            for (PlacedUnit unit : units) {
                if (!found.get(unit.index())
                        && (rests(unit.placement().station(), found)
                                || rests(unit.placement().road(), found))) {
                    found.set(unit.index());
                    more = true;
                }
            }
        }
        return found;
    }

    private boolean rests(@Nullable Place place, BitSet hosts) {
        PlacedUnit host = place == null || place.host() == null ? null : byId.get(place.host());
        return host != null && hosts.get(host.index());
    }

    public Optional<PlacedUnit> unit(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * Something that several limits need of this scene, made once and then kept with it.
     *
     * @param type what it is; one value of each type is kept
     * @param maker makes it; may be called twice if two threads ask at once, so it must always make the same
     */
    public <T> T derived(Class<T> type, Function<Scene, T> maker) {
        return kept.get(type, () -> maker.apply(this));
    }

    /**
     * The same of something that depends on brief, catalog entries and rules alone, and on no placement, route or content: it is
     * kept for all scenes that come of this one.
     */
    public <T> T steady(Class<T> type, Function<Scene, T> maker) {
        return steady.get(type, () -> maker.apply(this));
    }
}
