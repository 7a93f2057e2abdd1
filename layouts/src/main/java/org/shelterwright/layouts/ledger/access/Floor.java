package org.shelterwright.layouts.ledger.access;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * The floor as a standing person meets it, on station: what reaches into the height between the step height and the
 * headroom is in the way. A loose seat is pushed aside and so is not.
 *
 * @param headroom (µm)
 * @param step height of what is stepped over (µm)
 */
record Floor(Scene scene, int headroom, int step) {
    /** The floor under the rules of a scene; empty if they set no headroom. A step height that is not set is zero. */
    static Optional<Floor> of(Scene scene) {
        Rules rules = scene.rules();
        return rules.rule(Figure.WALKWAY_HEADROOM)
                .map(rule ->
                        new Floor(scene, micrometres(rule.value()), micrometres(rules.valueOr(Figure.STEP_HEIGHT, 0))));
    }

    /** The floor for a way out: with the headroom of ways out where the rules set one. */
    static Optional<Floor> ofWayOut(Scene scene) {
        Optional<Floor> floor = of(scene);
        return scene.rules()
                .rule(Figure.EXIT_HEADROOM)
                .flatMap(rule -> floor.map(one -> one.with(micrometres(rule.value()))))
                .or(() -> floor);
    }

    private Floor with(int other) {
        return new Floor(scene, other, step);
    }

    static int micrometres(double mm) {
        return (int) Math.round(Math.max(-500_000, Math.min(500_000, mm)) * Lengths.MM);
    }

    Rect room() {
        return Rect.of(scene.body().inside().box());
    }

    /** What stands in the way, seen from above. */
    List<Rect> obstacles() {
        List<Rect> obstacles = new ArrayList<>();
        for (Intrusion intrusion : scene.body().intrusions()) {
            add(intrusion.box(), obstacles);
        }
        for (PlacedUnit unit : scene.units()) {
            if (!pushedAside(unit)) {
                unit.solids(Situation.ON_STATION).forEach(solid -> add(solid, obstacles));
            }
        }
        return obstacles;
    }

    /** The same with every drawer, slide-out and flap out. */
    List<Rect> obstaclesWithDrawersOut() {
        List<Rect> obstacles = obstacles();
        for (PlacedUnit unit : scene.units()) {
            for (MovablePart part : unit.item().movableParts()) {
                if (staysOut(part.kind())) {
                    add(
                            unit.pose(Situation.ON_STATION)
                                    .apply(part.sweep(), unit.item().size()),
                            obstacles);
                }
            }
        }
        return obstacles;
    }

    /** The zones that a person walks to, inside the body: seat zones, and service zones that reach down to the floor. */
    List<PlacedZone> targets() {
        List<PlacedZone> targets = new ArrayList<>();
        for (PlacedUnit unit : scene.units()) {
            for (PlacedZone zone : unit.zones(Situation.ON_STATION)) {
                if (walkedTo(zone) && Rect.of(zone.box()).overlaps(room())) {
                    targets.add(zone);
                }
            }
        }
        return targets;
    }

    private boolean walkedTo(PlacedZone zone) {
        Box box = zone.box();
        return zone.purpose() == Purpose.SEAT
                || zone.purpose() == Purpose.SERVICE && box.z0() <= step && box.z1() > step;
    }

    /** The seat zones among the targets: where people work. */
    List<PlacedZone> seats() {
        return targets().stream().filter(zone -> zone.purpose() == Purpose.SEAT).toList();
    }

    /** The doors by which people come in. */
    List<WayIn> doors() {
        return waysIn(
                opening -> opening.kind() == Opening.Kind.DOOR && opening.wall().upright());
    }

    List<WayIn> exits() {
        return waysIn(Opening::exit);
    }

    private List<WayIn> waysIn(Predicate<Opening> kind) {
        return scene.body().openings().stream()
                .filter(kind)
                .map(opening -> WayIn.of(opening, scene.body().inside()))
                .toList();
    }

    private void add(Box solid, List<Rect> obstacles) {
        if (inTheWay(solid)) {
            obstacles.add(Rect.of(solid));
        }
    }

    boolean inTheWay(Box solid) {
        return solid.z0() < headroom && solid.z1() > step;
    }

    static boolean pushedAside(PlacedUnit unit) {
        return unit.item().kind() == ItemKind.SEAT && unit.item().mounting().loose();
    }

    private static boolean staysOut(MovablePart.Kind kind) {
        return kind == MovablePart.Kind.DRAWER || kind == MovablePart.Kind.SLIDE_OUT || kind == MovablePart.Kind.FLAP;
    }
}
