package org.shelterwright.app.desk.hand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * Finds the free place nearest to a wish: on a surface that the item allows, with every fixing on a hard point, clear of
 * solids on station, and of clear zones if there is such a place. Whether all limits hold there, the ledger says.
 */
public final class FreePlace {
    private static final int STEP = 100 * Lengths.MM;

    private final Scene scene;
    private final UnitSpec unit;
    private final Item item;
    private final List<Box> solids = new ArrayList<>();
    private final List<Box> zones = new ArrayList<>();
    private final List<Box> outlines = new ArrayList<>();

    private record Candidate(Berth berth, Point at, long way) {}

    public FreePlace(Scene scene, UnitSpec unit) {
        this.scene = scene;
        this.unit = unit;
        item = scene.layout().item(unit);
        for (PlacedUnit other : scene.units()) {
            if (!other.id().equals(unit.id())) {
                solids.addAll(other.solids(Situation.ON_STATION));
                outlines.add(other.outline(Situation.ON_STATION));
                other.zones(Situation.ON_STATION).stream().map(PlacedZone::box).forEach(zones::add);
            }
        }
        scene.body().intrusions().stream().map(Intrusion::box).forEach(solids::add);
    }

    /**
     * Finds the nearest free place. Cost: candidates (holes, faces, steps) times solids.
     *
     * @param wish where its middle would best be
     * @param turn the turn that it should have; {@code null}: any that its item allows
     * @throws IllegalArgumentException with a sentence if there is none
     */
    public Place nearest(Point wish, @Nullable QuarterTurn turn) {
        Set<QuarterTurn> turns = turn == null ? new TreeSet<>(item.turns()) : Set.of(turn);
        List<Candidate> candidates = new ArrayList<>();
        for (Berth berth : Berth.of(scene, unit, turns)) {
            add(berth, wish, candidates);
        }
        if (candidates.isEmpty()) {
            throw nowhere(unit);
        }
        candidates.sort(Comparator.comparingLong(Candidate::way));
        return Stream.concat(
                        candidates.stream().filter(one -> clearOfSolids(one) && clearOfZones(one)),
                        candidates.stream().filter(this::clearOfSolids))
                .findFirst()
                .map(one -> one.berth.at(one.at))
                .orElseThrow(() -> new IllegalArgumentException("No free place is left for " + unit.name()
                        + ": something stands at each place where it can be mounted."));
    }

    static IllegalArgumentException nowhere(UnitSpec unit) {
        return new IllegalArgumentException(
                unit.name() + " has no place in this body: it is too large, or its fixings land nowhere.");
    }

    /** How free it is there: zero if it is clear of all, one if it stands in a clear zone or its own has no
     * room, two if it meets a solid. */
    int trouble(Berth berth, Point low) {
        Candidate one = new Candidate(berth, low, 0);
        return clearOfSolids(one) ? clearOfZones(one) && reached(one) ? 0 : 1 : 2;
    }

    /** Whether the body has room for whoever stands or sits before it. */
    private boolean reached(Candidate one) {
        Box inside = scene.body().inside().box();
        return one.berth.posed().zones(Situation.ON_STATION).stream()
                .filter(zone -> zone.purpose().reached())
                .allMatch(zone -> inside.contains(zone.box().moved(one.at)));
    }

    private void add(Berth berth, Point wish, List<Candidate> candidates) {
        Box outline = berth.posed().outline(Situation.ON_STATION);
        Point low = wish.minus(outline.centre());
        for (int x : values(Axis.X, berth.region(), outline, low.x())) {
            for (int y : values(Axis.Y, berth.region(), outline, low.y())) {
                for (int z : values(Axis.Z, berth.region(), outline, low.z())) {
                    long way = (long) Math.abs(x - low.x()) + Math.abs(y - low.y()) + Math.abs(z - low.z());
                    candidates.add(new Candidate(berth, new Point(x, y, z), way));
                }
            }
        }
    }

    /** Places of the low corner worth trying on an axis: the wish, the ends, faces of others, and steps between. */
    private Set<Integer> values(Axis axis, Box region, Box outline, int wish) {
        int low = region.low(axis);
        int high = region.high(axis);
        Set<Integer> values = new TreeSet<>(List.of(low, high, Holes.clamped(region, axis, wish)));
        if (low < high) {
            for (Box other : outlines) {
                values.add(other.high(axis));
                values.add(other.low(axis) - outline.extent(axis));
            }
            for (int at = low; at < high; at += STEP) {
                values.add(at);
            }
            values.removeIf(value -> value < low || value > high);
        }
        return values;
    }

    private boolean clearOfSolids(Candidate one) {
        return one.berth.posed().solids(Situation.ON_STATION).stream()
                .noneMatch(solid -> overlapsAny(solid.moved(one.at), solids));
    }

    private boolean clearOfZones(Candidate one) {
        PlacedUnit posed = one.berth.posed();
        return posed.solids(Situation.ON_STATION).stream().noneMatch(solid -> overlapsAny(solid.moved(one.at), zones))
                && posed.zones(Situation.ON_STATION).stream()
                        .noneMatch(zone -> overlapsAny(zone.box().moved(one.at), solids));
    }

    private static boolean overlapsAny(Box box, List<Box> others) {
        for (Box other : others) {
            if (box.overlaps(other)) {
                return true;
            }
        }
        return false;
    }
}
