package org.shelterwright.layouts.cable;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.layout.Run;

/**
 * How far a power cable and one that it may disturb run side by side. Fibre and earth are disturbed by nothing and disturb
 * nothing. What lies in a screened tray is screened from what lies elsewhere, and compartments of one from each other.
 *
 * @param power the wire with power
 * @param other the wire beside it
 * @param length over which they run along each other nearer than asked (µm)
 * @param place where the longest part of it is
 */
public record Beside(String power, String other, long length, Box place) {
    private record Straight(Point a, Point b, Axis axis, Run run, boolean screened) {}

    /**
     * All pairs that run along each other.
     *
     * @param among of which pairs at least one is to be; {@code null}: all pairs
     * @param separation least distance between their outsides (µm)
     */
    static List<Beside> of(
            List<RouteShape> shapes,
            @Nullable Set<String> among,
            Map<String, Cable> cables,
            Map<String, TrayPath> trays,
            int separation) {
        List<Beside> found = new ArrayList<>();
        List<@Nullable List<Straight>> straights = new ArrayList<>(Collections.nCopies(shapes.size(), null));
        for (int i = 0; i < shapes.size(); i++) {
            Cable power = cables.get(shapes.get(i).route().cable());
            if (power == null || power.cableClass() != CableClass.POWER) {
                continue;
            }
            boolean all = among == null || among.contains(shapes.get(i).route().wire());
            for (int j = 0; j < shapes.size(); j++) {
                Cable other = cables.get(shapes.get(j).route().cable());
                boolean asked = all
                        || among != null && among.contains(shapes.get(j).route().wire());
                if (asked && other != null && disturbed(other.cableClass())) {
                    int apart = separation + power.diameter() / 2 + other.diameter() / 2;
                    if (near(shapes.get(i), shapes.get(j), apart)) {
                        add(
                                shapes.get(i),
                                shapes.get(j),
                                straights(i, shapes, straights, trays),
                                straights(j, shapes, straights, trays),
                                apart,
                                found);
                    }
                }
            }
        }
        return found;
    }

    private static boolean near(RouteShape a, RouteShape b, int apart) {
        Box one = a.hull();
        Box other = b.hull();
        return one != null
                && other != null
                && one.gap(other, Axis.X) < apart
                && one.gap(other, Axis.Y) < apart
                && one.gap(other, Axis.Z) < apart;
    }

    private static List<Straight> straights(
            int i, List<RouteShape> shapes, List<@Nullable List<Straight>> made, Map<String, TrayPath> trays) {
        List<Straight> known = made.get(i);
        if (known == null) {
            known = straights(shapes.get(i), trays);
            made.set(i, known);
        }
        return known;
    }

    /** Whether cables of a class are kept apart from power. */
    public static boolean disturbed(CableClass cableClass) {
        return cableClass == CableClass.SIGNAL || cableClass == CableClass.RADIO_FREQUENCY;
    }

    private static void add(
            RouteShape power,
            RouteShape other,
            List<Straight> ofPower,
            List<Straight> ofOther,
            int apart,
            List<Beside> found) {
        long length = 0;
        int longest = 0;
        Box place = null;
        for (Straight p : ofPower) {
            for (Straight q : ofOther) {
                int shared = p.axis() == q.axis() && !parted(p, q) ? shared(p, q) : 0;
                if (shared > 0 && across(p, q) < (double) apart * apart) {
                    length += shared;
                    if (shared > longest) {
                        longest = shared;
                        place = box(p).hull(box(q));
                    }
                }
            }
        }
        if (place != null) {
            found.add(new Beside(power.route().wire(), other.route().wire(), length, place));
        }
    }

    private static boolean parted(Straight p, Straight q) {
        boolean together = p.run().tray() != null
                && p.run().tray().equals(q.run().tray())
                && p.run().compartment() == q.run().compartment();
        return !together && (p.screened() || q.screened());
    }

    private static int shared(Straight p, Straight q) {
        int low = Math.max(box(p).low(p.axis()), box(q).low(p.axis()));
        int high = Math.min(box(p).high(p.axis()), box(q).high(p.axis()));
        return high - low;
    }

    /** Square of the distance between the middles (µm²). */
    private static double across(Straight p, Straight q) {
        double square = 0;
        for (Axis axis : Axis.values()) {
            if (axis != p.axis()) {
                double d = (double) p.a().along(axis) - q.a().along(axis);
                square += d * d;
            }
        }
        return square;
    }

    private static Box box(Straight s) {
        return span(s.a(), s.b());
    }

    /** The flat cuboid of a straight. */
    static Box span(Point a, Point b) {
        return new Box(
                Math.min(a.x(), b.x()),
                Math.min(a.y(), b.y()),
                Math.min(a.z(), b.z()),
                Math.max(a.x(), b.x()),
                Math.max(a.y(), b.y()),
                Math.max(a.z(), b.z()));
    }

    private static List<Straight> straights(RouteShape shape, Map<String, TrayPath> trays) {
        List<Straight> straights = new ArrayList<>();
        for (Run run : shape.route().runs()) {
            TrayPath tray = run.tray() == null ? null : trays.get(run.tray());
            boolean screened = tray != null && tray.tray().screened();
            for (int i = 1; i < run.path().size(); i++) {
                Point a = run.path().get(i - 1);
                Point b = run.path().get(i);
                for (Axis axis : Axis.values()) {
                    if (a.along(axis) != b.along(axis)) {
                        straights.add(new Straight(a, b, axis, run, screened));
                    }
                }
            }
        }
        return straights;
    }
}
