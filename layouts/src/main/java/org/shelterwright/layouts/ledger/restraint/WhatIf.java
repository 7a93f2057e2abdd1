package org.shelterwright.layouts.ledger.restraint;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.fastener.Fastener;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.ledger.fit.Landing;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Looks for the least change of the fixings of a unit after which it holds: a higher property class, a thicker thread that the
 * hard points take, further fixings half way between those that are there. Each is solved anew before it is named.
 */
final class WhatIf {
    private final Scene scene;
    private final Landing landing;
    private final Fasteners fasteners;
    private final PlacedUnit unit;
    private final StackLoad load;
    private final List<Push> pushes;

    WhatIf(Scene scene, Landing landing, Fasteners fasteners, PlacedUnit unit, StackLoad load, List<Push> pushes) {
        this.scene = scene;
        this.landing = landing;
        this.fasteners = fasteners;
        this.unit = unit;
        this.load = load;
        this.pushes = pushes;
    }

    @Nullable
    Change change(List<HeldFixing> fixings, Solved now) {
        Strain worst = now.worst();
        if (worst != null && worst.ofBolt()) {
            Change bolts = otherBolt(fixings);
            if (bolts != null) {
                return bolts;
            }
        }
        return moreFixings(fixings);
    }

    private @Nullable Change otherBolt(List<HeldFixing> fixings) {
        Fastener now = fixings.get(0).bolt();
        for (Fastener stronger : fasteners.strongerThan(now)) {
            List<HeldFixing> changed =
                    fixings.stream().map(one -> one.with(stronger)).toList();
            boolean fits = fixings.stream().allMatch(one -> takes(one, stronger));
            if (fits && holds(changed)) {
                String name = Fasteners.name(stronger.thread(), stronger.grade());
                return new Change(
                        stronger,
                        List.of(),
                        "Take bolts " + name + " for " + unit.name() + ": then it holds under every load case.");
            }
        }
        return null;
    }

    private static boolean takes(HeldFixing fixing, Fastener bolt) {
        var hardPoint = fixing.hardPoint();
        return fixing.bolt().thread().equals(bolt.thread())
                || hardPoint != null
                        && (hardPoint.threads().isEmpty() || hardPoint.threads().contains(bolt.thread()));
    }

    /** Tries one fixing at each place, then all of them. */
    private @Nullable Change moreFixings(List<HeldFixing> fixings) {
        List<Point> places = new ArrayList<>(between(fixings));
        List<List<Point>> sets = new ArrayList<>();
        places.forEach(place -> sets.add(List.of(place)));
        for (int i = 0; i < places.size(); i++) {
            for (int j = i + 1; j < places.size(); j++) {
                sets.add(List.of(places.get(i), places.get(j)));
            }
        }
        sets.add(places);
        for (List<Point> set : sets) {
            List<HeldFixing> more = with(fixings, set);
            if (more.size() > fixings.size() && holds(more)) {
                return new Change(null, set, sentence(fixings.get(0), set));
            }
        }
        return null;
    }

    /** Places half way between two fixings of the mounting face, in the frame of the item, that no fixing takes yet. */
    private Set<Point> between(List<HeldFixing> fixings) {
        List<Fixing> mounted = new ArrayList<>();
        for (HeldFixing one : fixings) {
            if (one.placed().fixing().face() == fixings.get(0).placed().fixing().face()) {
                mounted.add(one.placed().fixing());
            }
        }
        Set<Point> places = new LinkedHashSet<>();
        for (int i = 0; i < mounted.size(); i++) {
            for (int j = i + 1; j < mounted.size(); j++) {
                Point a = mounted.get(i).at();
                Point b = mounted.get(j).at();
                Point middle = new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2, (a.z() + b.z()) / 2);
                if (a.x() == b.x() || a.y() == b.y() || a.z() == b.z()) {
                    landed(middle, mounted.get(i)).forEach(places::add);
                }
            }
        }
        mounted.forEach(one -> places.remove(one.at()));
        return places;
    }

    /** The place in the item that comes to lie on the hard point nearest to the wanted one; none if that leaves the item. */
    private List<Point> landed(Point wanted, Fixing like) {
        PlacedFixing there = placed(wanted, like);
        if (there.intoHost()) {
            return List.of(wanted);
        }
        return landing.nearest(there)
                .map(shift -> {
                    Point back = turnedBack(shift);
                    return wanted.plus(back);
                })
                .filter(at -> unit.item().size().box().contains(at))
                .map(List::of)
                .orElse(List.of());
    }

    private Point turnedBack(Point shift) {
        return switch (unit.pose(Situation.ON_THE_ROAD).yaw()) {
            case R0 -> shift;
            case R90 -> new Point(shift.y(), -shift.x(), shift.z());
            case R180 -> new Point(-shift.x(), -shift.y(), shift.z());
            case R270 -> new Point(-shift.y(), shift.x(), shift.z());
        };
    }

    private PlacedFixing placed(Point at, Fixing like) {
        Pose pose = unit.pose(Situation.ON_THE_ROAD);
        Fixing fixing = new Fixing("new", at, like.face(), like.thread(), like.grade(), null);
        return new PlacedFixing(
                fixing,
                pose.apply(at, unit.item().size()),
                pose.apply(like.face()),
                unit.place(Situation.ON_THE_ROAD).host() != null);
    }

    private List<HeldFixing> with(List<HeldFixing> fixings, List<Point> places) {
        List<HeldFixing> more = new ArrayList<>(fixings);
        for (Point place : places) {
            PlacedFixing placed = placed(place, fixings.get(0).placed().fixing());
            HeldFixing fixing =
                    HeldFixing.of(scene, landing, fasteners, unit, placed).fixing();
            if (fixing != null) {
                more.add(fixing);
            }
        }
        return more.size() == fixings.size() + places.size() ? more : fixings;
    }

    private boolean holds(List<HeldFixing> fixings) {
        return Solved.of(unit, fixings, load, pushes).holds();
    }

    private String sentence(HeldFixing like, List<Point> places) {
        List<String> where = places.stream()
                .map(at -> "x " + Lengths.format(at.x()) + ", y " + Lengths.format(at.y()) + ", z "
                        + Lengths.format(at.z()))
                .toList();
        String name = Fasteners.name(
                like.bolt().thread(),
                Objects.requireNonNull(like.placed().fixing().grade()));
        return "Add " + Wording.count(places.size(), "fixing") + " " + name + " to " + unit.name() + " at "
                + String.join("; ", where) + " mm of it: then it holds under every load case.";
    }
}
