package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.Scene;

/** Compiles a scene into slots and options. */
final class ProblemCompiler {
    private static final String ZONES_INSIDE = "access.zone-inside";

    private final Scene scene;
    private final Layout layout;
    private final List<UnitSpec> units;
    private final Map<String, Integer> stationSlot = new LinkedHashMap<>();
    private final Map<String, Integer> roadSlot = new HashMap<>();
    private final OptionCompiler options;
    private final HostCompiler hosts;
    private final Set<String> relaxed;
    private int count;

    ProblemCompiler(Scene scene, Set<String> relaxed) {
        this.scene = scene;
        this.layout = scene.layout();
        this.units = scene.brief().units();
        this.options = new OptionCompiler(scene, !relaxed.contains(ZONES_INSIDE));
        this.relaxed = relaxed;
        this.hosts = new HostCompiler(scene);
    }

    FitProblem compile() {
        for (UnitSpec unit : units) {
            stationSlot.put(unit.id(), count++);
            roadSlot.put(unit.id(), layout.item(unit).mounting().loose() ? count++ : count - 1);
        }
        List<Slot> slots = new ArrayList<>();
        for (UnitSpec unit : units) {
            boolean loose = layout.item(unit).mounting().loose();
            slots.add(slot(unit, slots.size(), true, !loose));
            if (loose) {
                slots.add(slot(unit, slots.size(), false, true));
            }
        }
        return with(slots);
    }

    /** Compiles the same scene with other limits left out. Slots are those of the other problem, unless these limits change them. */
    FitProblem compile(FitProblem other) {
        boolean counts = !relaxed.contains(ZONES_INSIDE);
        if (counts != other.counts(ZONES_INSIDE)) {
            return compile();
        }
        stationSlot.putAll(other.stationSlots());
        roadSlot.putAll(other.roadSlots());
        return with(other.slots());
    }

    private FitProblem with(List<Slot> slots) {
        List<WishTerm> wishes = new WishCompiler(stationSlot, scene.body().inside())
                .terms(scene.brief().wishes());
        List<TieTerm> ties = new ArrayList<>(
                relaxed.contains("cables.length") ? List.of() : new WireCompiler(scene, stationSlot).terms());
        ties.addAll(new HandCompiler(scene, stationSlot, !relaxed.contains("stowage.at-hand")).terms());
        return new FitProblem(scene, slots, stationSlot, roadSlot, wishes, ties, relaxed);
    }

    private Slot slot(UnitSpec unit, int index, boolean onStation, boolean onTheRoad) {
        Situation situation = onStation ? Situation.ON_STATION : Situation.ON_THE_ROAD;
        Situation governing = onTheRoad ? Situation.ON_THE_ROAD : Situation.ON_STATION;
        List<Situation> present =
                onStation && onTheRoad ? List.of(Situation.ON_STATION, Situation.ON_THE_ROAD) : List.of(situation);
        Item item = scene.filled(unit, governing);
        Place kept = place(unit.id(), situation);
        Pin pin = kept == null ? Pin.NONE : pin(unit.id(), situation, 0);
        if (kept != null && pin.whole()) {
            return new Slot(
                    index,
                    unit,
                    item,
                    onStation,
                    onTheRoad,
                    List.of(asItStands(unit, kept, situation, governing)),
                    pin);
        }
        List<Option> found = new ArrayList<>(options.onBody(unit, present, pin, kept));
        for (UnitSpec host : units) {
            Item hostItem = layout.item(host);
            boolean steadyHost = !hostItem.mounting().loose();
            if (!host.id().equals(unit.id()) && (steadyHost || !(onStation && onTheRoad))) {
                int hostSlot = onStation ? slotOf(stationSlot, host) : slotOf(roadSlot, host);
                found.addAll(hosts.on(unit, host, hostSlot, governing, pin, kept, place(host.id(), situation)));
            }
        }
        if (found.isEmpty() && kept != null && !pin.equals(Pin.NONE)) {
            return new Slot(
                    index,
                    unit,
                    item,
                    onStation,
                    onTheRoad,
                    List.of(asItStands(unit, kept, situation, governing)),
                    Pin.ALL);
        }
        return new Slot(index, unit, item, onStation, onTheRoad, found, pin);
    }

    private Option asItStands(UnitSpec unit, Place kept, Situation situation, Situation governing) {
        Point at = kept.pose().at();
        String host = kept.host();
        Place hostPlace = host == null ? null : place(host, situation);
        if (host == null || hostPlace == null) {
            return options.asItStands(unit, kept, at, null, governing);
        }
        Integer slot = (situation == Situation.ON_STATION ? stationSlot : roadSlot).get(host);
        Option.Berth berth = slot == null ? null : new Option.Berth(slot, 0, null);
        return options.asItStands(unit, kept, at.minus(hostPlace.pose().at()), berth, governing);
    }

    /** The pin of a unit, widened by those of its guests: a host must not carry a pinned guest away. */
    private Pin pin(String unit, Situation situation, int depth) {
        Placement own = layout.placements().get(unit);
        Pin pin = own == null ? Pin.NONE : own.pin();
        if (depth > units.size()) {
            return pin;
        }
        for (UnitSpec guest : units) {
            Place place = place(guest.id(), situation);
            if (place != null && unit.equals(place.host())) {
                Pin more = pin(guest.id(), situation, depth + 1);
                pin = new Pin(pin.x() || more.x(), pin.y() || more.y(), pin.z() || more.z(), pin.turn() || more.turn());
            }
        }
        return pin;
    }

    private @Nullable Place place(String unit, Situation situation) {
        Placement placement = layout.placements().get(unit);
        return placement == null ? null : placement.in(situation);
    }

    private static int slotOf(Map<String, Integer> slots, UnitSpec unit) {
        Integer slot = slots.get(unit.id());
        return slot == null ? -1 : slot;
    }
}
