package org.shelterwright.layouts.edit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/** Units that are mounted on or under others: they go where their host goes. */
final class Carried {
    private Carried() {}

    /** The units that a unit carries in any situation, directly or through others. */
    static Set<String> by(Layout layout, String host) {
        Set<String> carried = new LinkedHashSet<>();
        Deque<String> hosts = new ArrayDeque<>(Set.of(host));
        while (!hosts.isEmpty()) {
            String at = hosts.remove();
            for (Placement placement : layout.placements().values()) {
                boolean rides = isHost(at, placement.station()) || isHost(at, placement.in(Situation.ON_THE_ROAD));
                if (rides && carried.add(placement.unit())) {
                    hosts.add(placement.unit());
                }
            }
        }
        return carried;
    }

    static Layout takeOut(Layout layout, String unit) {
        Map<String, Placement> left = new LinkedHashMap<>(layout.placements());
        left.keySet().removeAll(by(layout, unit));
        left.remove(unit);
        return layout.withPlacements(left);
    }

    /**
     * Gives units new placements and moves what they carry along.
     *
     * @throws IllegalArgumentException if a unit would be mounted on a unit that is not placed, or that it carries itself
     */
    static Layout move(Layout layout, Map<String, Placement> moved) {
        for (Placement placement : moved.values()) {
            requireHost(layout, placement, placement.station());
            requireHost(layout, placement, placement.in(Situation.ON_THE_ROAD));
        }
        Map<String, Placement> changed = new LinkedHashMap<>(layout.placements());
        changed.putAll(moved);
        for (Situation situation : Situation.values()) {
            for (String host : moved.keySet()) {
                ride(layout, situation, host, moved.keySet(), changed);
            }
        }
        return layout.withPlacements(changed);
    }

    private static void requireHost(Layout layout, Placement placement, Place place) {
        String host = place.host();
        if (host == null) {
            return;
        }
        Units.placed(layout, host);
        if (host.equals(placement.unit()) || by(layout, placement.unit()).contains(host)) {
            throw new IllegalArgumentException("The unit \"" + placement.unit() + "\" cannot be mounted on \"" + host
                    + "\", since it carries that one. Take one of them out first.");
        }
    }

    private static void ride(
            Layout layout, Situation situation, String host, Set<String> placed, Map<String, Placement> changed) {
        Placement before = layout.placements().get(host);
        Placement after = changed.get(host);
        if (before == null || after == null) {
            return;
        }
        Pose from = before.in(situation).pose();
        Pose to = after.in(situation).pose();
        if (from.equals(to)) {
            return;
        }
        for (Placement rider : layout.placements().values()) {
            if (isHost(host, rider.in(situation)) && !placed.contains(rider.unit())) {
                Placement current = changed.getOrDefault(rider.unit(), rider);
                Pose pose = along(rider.in(situation).pose(), size(layout, rider.unit()), from, to, size(layout, host));
                changed.put(rider.unit(), with(current, situation, pose));
                ride(layout, situation, rider.unit(), placed, changed);
            }
        }
    }

    private static Placement with(Placement placement, Situation situation, Pose pose) {
        if (situation == Situation.ON_STATION) {
            return placement.withStation(placement.station().with(pose));
        }
        Place road = placement.in(Situation.ON_THE_ROAD).with(pose);
        return placement.withRoad(road.equals(placement.station()) ? null : road);
    }

    /** The pose of a rider after its host went from one pose to another. */
    private static Pose along(Pose rider, Size riderSize, Pose from, Pose to, Size hostSize) {
        Box outline = rider.outline(riderSize).moved(Point.ORIGIN.minus(from.at()));
        QuarterTurn back = QuarterTurn.ofDegrees((360 - from.yaw().degrees()) % 360);
        Box inHost = back.apply(outline, from.yaw().apply(hostSize));
        return new Pose(to.apply(inHost, hostSize).low(), rider.yaw().plus(back).plus(to.yaw()));
    }

    private static Size size(Layout layout, String unit) {
        return layout.item(Units.require(layout, unit)).size();
    }

    private static boolean isHost(String host, Place place) {
        return host.equals(place.host());
    }
}
