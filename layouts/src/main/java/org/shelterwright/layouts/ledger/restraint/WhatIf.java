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
import org.shelterwright.catalog.space.Axis;
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
 * hard points take, further fixings half way between those that are there or
 * mirrored to the other side. Each is solved anew before it is named.
 */
final class WhatIf {
    /** With more new fixings than this it is no mend but another item. */
    private static final int MOST_MORE = 6;

    private final Scene scene;
    private final Landing landing;
    private final Fasteners fasteners;
    private final PlacedUnit unit;
    private final StackLoad load;
    private final List<Push> pushes;
    private List<Push> telling;

    WhatIf(Scene scene, Landing landing, Fasteners fasteners, PlacedUnit unit, StackLoad load, List<Push> pushes) {
        this.scene = scene;
        this.landing = landing;
        this.fasteners = fasteners;
        this.unit = unit;
        this.load = load;
        this.pushes = pushes;
        this.telling = pushes;
    }

    @Nullable
    Change change(List<HeldFixing> fixings, Solved now) {
        Strain worst = now.worst();
        Push unheld = now.unheld();
        telling = unheld != null ? List.of(unheld) : worst != null ? List.of(worst.push()) : pushes;
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

    /** Tries one fixing, then two, then one at every place. */
    private @Nullable Change moreFixings(List<HeldFixing> fixings) {
        List<Point> places = new ArrayList<>(places(fixings));
        List<List<Point>> sets = new ArrayList<>();
        places.forEach(place -> sets.add(List.of(place)));
        for (int i = 0; i < places.size(); i++) {
            for (int j = i + 1; j < places.size(); j++) {
                sets.add(List.of(places.get(i), places.get(j)));
            }
        }
        if (places.size() <= MOST_MORE) {
            sets.add(places);
        }
        for (List<Point> set : sets) {
            List<HeldFixing> more = with(fixings, set);
            if (more.size() > fixings.size() && holds(more)) {
                return new Change(null, set, sentence(fixings.get(0), set));
            }
        }
        return null;
    }

    /** Places half way between two fixings of the mounting face and mirrored ones, where no fixing is yet; frame of the item. */
    private Set<Point> places(List<HeldFixing> fixings) {
        Fixing like = fixings.get(0).placed().fixing();
        List<Point> there = fixings.stream()
                .map(one -> one.placed().fixing())
                .filter(one -> one.face() == like.face())
                .map(Fixing::at)
                .toList();
        Set<Point> places = new LinkedHashSet<>();
        for (int i = 0; i < there.size(); i++) {
            for (int j = i + 1; j < there.size(); j++) {
                Point a = there.get(i);
                Point b = there.get(j);
                if (a.x() == b.x() || a.y() == b.y() || a.z() == b.z()) {
                    places.addAll(
                            landed(new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2, (a.z() + b.z()) / 2), like));
                }
            }
        }
        for (Axis axis : Axis.values()) {
            if (axis != like.face().axis()) {
                int size = unit.item().size().box().high(axis);
                there.forEach(at -> places.addAll(landed(at.with(axis, size - at.along(axis)), like)));
            }
        }
        there.forEach(places::remove);
        return places;
    }

    /** The place in the item that comes to lie on the hard point nearest to the wanted one; none if that leaves the item. */
    private List<Point> landed(Point wanted, Fixing like) {
        PlacedFixing there = placed(wanted, like);
        if (there.intoHost()) {
            return List.of(wanted);
        }
        return landing.nearest(there)
                .map(shift -> wanted.plus(turnedBack(shift)))
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
                null,
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

    /** Asks the push that was worst first, since most changes fail by it. */
    private boolean holds(List<HeldFixing> fixings) {
        return Solved.of(unit, fixings, load, telling).holds()
                && Solved.of(unit, fixings, load, pushes).holds();
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
