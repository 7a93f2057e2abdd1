package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.Scene;

/**
 * A brief compiled for the search: its slots with their options, the obstacles of the body, wishes and ties. Immutable;
 * shared by all lanes.
 */
public final class FitProblem {
    private final Scene scene;
    private final List<Slot> slots;
    private final Map<String, Integer> stationSlot;
    private final Map<String, Integer> roadSlot;
    private final List<WishTerm> wishes;
    private final List<TieTerm> ties;
    private final BodyTerms bodyTerms;
    private final AccessRules access;
    private final Set<String> relaxed;

    FitProblem(
            Scene scene,
            List<Slot> slots,
            Map<String, Integer> stationSlot,
            Map<String, Integer> roadSlot,
            List<WishTerm> wishes,
            List<TieTerm> ties,
            Set<String> relaxed) {
        this.scene = scene;
        this.slots = List.copyOf(slots);
        this.stationSlot = Map.copyOf(stationSlot);
        this.roadSlot = Map.copyOf(roadSlot);
        this.wishes = List.copyOf(wishes);
        this.ties = List.copyOf(ties);
        this.bodyTerms = new BodyTerms(scene.body());
        this.access = AccessRules.of(scene, relaxed);
        this.relaxed = Set.copyOf(relaxed);
    }

    /**
     * Compiles a layout: its brief is the question, its pinned placements are kept, the others are a first idea.
     *
     * @throws IllegalArgumentException if a wish names an unknown unit or lacks a figure
     */
    public static FitProblem of(Scene scene) {
        return new ProblemCompiler(scene, Set.of()).compile();
    }

    /**
     * The same brief, with some limits left out of the score.
     *
     * @param limits ids; those that the search does not compile change nothing
     */
    public FitProblem relaxed(Set<String> limits) {
        return new ProblemCompiler(scene, limits).compile(this);
    }

    Map<String, Integer> stationSlots() {
        return stationSlot;
    }

    Map<String, Integer> roadSlots() {
        return roadSlot;
    }

    /** Whether a limit counts. */
    public boolean counts(String limit) {
        return !relaxed.contains(limit);
    }

    public Scene scene() {
        return scene;
    }

    public Size inside() {
        return scene.body().inside();
    }

    public List<Slot> slots() {
        return slots;
    }

    public Slot slot(int index) {
        return slots.get(index);
    }

    public int size() {
        return slots.size();
    }

    /** The slot of a unit in a situation. */
    public int slotOf(String unit, Situation situation) {
        Integer slot = (situation == Situation.ON_STATION ? stationSlot : roadSlot).get(unit);
        if (slot == null) {
            throw new IllegalArgumentException("There is no unit \"" + unit + "\".");
        }
        return slot;
    }

    public List<WishTerm> wishes() {
        return wishes;
    }

    /** What draws units together: wires, and pieces that tasks need. */
    public List<TieTerm> ties() {
        return ties;
    }

    public BodyTerms bodyTerms() {
        return bodyTerms;
    }

    public AccessRules access() {
        return access;
    }

    /**
     * Writes spots back into a layout.
     *
     * @param spots one for each slot; {@code null}: not placed
     * @return the layout; a unit of which a spot is missing is left out
     */
    public Layout layout(@Nullable Spot[] spots) {
        Map<String, Placement> placements = new LinkedHashMap<>();
        for (var unit : scene.brief().units()) {
            int station = slotOf(unit.id(), Situation.ON_STATION);
            int road = slotOf(unit.id(), Situation.ON_THE_ROAD);
            Spot standing = spots[station];
            Spot stowed = spots[road];
            if (standing != null && stowed != null) {
                Placement before = scene.layout().placements().get(unit.id());
                Pin pin = before == null ? Pin.NONE : before.pin();
                Place place = place(station, standing);
                placements.put(
                        unit.id(), new Placement(unit.id(), place, road == station ? null : place(road, stowed), pin));
            }
        }
        return scene.layout().withPlacements(placements);
    }

    /** The scene of such a layout. */
    public Scene scene(@Nullable Spot[] spots) {
        return Scene.of(layout(spots), scene.rules());
    }

    private Place place(int slot, Spot spot) {
        Option option = slots.get(slot).options().get(spot.option());
        Option.Berth berth = option.berth();
        String host = berth == null ? null : slots.get(berth.slot()).unit().id();
        return new Place(option.surface(), host, new Pose(new Point(spot.x(), spot.y(), spot.z()), option.turn()));
    }

    /** The spots of the placements that the start layout has and that fit an option; {@code null} for the others. */
    public @Nullable Spot[] start() {
        return spots(scene.layout());
    }

    /** The spots of the placements of a layout of this brief that fit an option; {@code null} for the others. */
    public @Nullable Spot[] spots(Layout layout) {
        @Nullable Spot[] spots = new Spot[slots.size()];
        for (Slot slot : slots) {
            Placement placement = layout.placements().get(slot.unit().id());
            if (placement != null) {
                Place place = placement.in(slot.onStation() ? Situation.ON_STATION : Situation.ON_THE_ROAD);
                spots[slot.index()] = spot(slot, place);
            }
        }
        return spots;
    }

    private @Nullable Spot spot(Slot slot, Place place) {
        Point at = place.pose().at();
        for (int o = 0; o < slot.options().size(); o++) {
            Option option = slot.options().get(o);
            Option.Berth berth = option.berth();
            String host = berth == null ? null : slots.get(berth.slot()).unit().id();
            if (option.surface() == place.surface()
                    && option.turn() == place.pose().yaw()
                    && java.util.Objects.equals(host, place.host())) {
                return new Spot(o, at.x(), at.y(), at.z());
            }
        }
        return null;
    }

    /** Units without any way to mount them, by id, with the situation. */
    public List<Slot> unmountable() {
        List<Slot> found = new ArrayList<>();
        for (Slot slot : slots) {
            if (slot.options().isEmpty()) {
                found.add(slot);
            }
        }
        return found;
    }
}
