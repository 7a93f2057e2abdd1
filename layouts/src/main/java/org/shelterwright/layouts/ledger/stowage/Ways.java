package org.shelterwright.layouts.ledger.stowage;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * How far pieces lie from where they are used: from the middle of their place, as the crow flies in the plan, to the middle of the
 * seat or service zone of the unit that the task is done at, or to the middle of the opening that one goes out by.
 */
public final class Ways {
    private final Scene scene;
    private final Inventory inventory;

    public Ways(Scene scene) {
        this.scene = scene;
        this.inventory = scene.brief().listed();
    }

    /** The task that a piece is used in, if it is used in one. */
    public Optional<Task> task(PieceSpec spec) {
        String id = spec.task();
        return id == null ? Optional.empty() : inventory.task(id);
    }

    /** Where a task is done, in the frame of the body; empty if it is not stated or its unit is not placed. */
    public Optional<Point> spot(Task task) {
        if (task.unit() != null) {
            return scene.unit(task.unit()).map(Ways::before);
        }
        return scene.body().openings().stream()
                .filter(opening -> opening.name().equals(task.opening()))
                .findFirst()
                .map(opening -> opening.area().centre());
    }

    static double mm(FilledPlace place, InPlace piece, Point spot) {
        return mm(place.unit(), piece.box(), spot);
    }

    /** Distance in the plan from the middle of a cuboid of a unit, in the frame of its item (mm). */
    public static double mm(PlacedUnit unit, Box box, Point spot) {
        Point at =
                unit.pose(Situation.ON_STATION).apply(box, unit.item().size()).centre();
        return Math.hypot(at.x() - (double) spot.x(), at.y() - (double) spot.y()) / Lengths.MM;
    }

    private static Point before(PlacedUnit unit) {
        return unit.pose(Situation.ON_STATION)
                .apply(spot(unit.item()), unit.item().size());
    }

    /** Where a task at a unit is done, in the frame of its item. */
    public static Point spot(Item item) {
        for (Purpose purpose : List.of(Purpose.SEAT, Purpose.SERVICE)) {
            for (ClearZone zone : item.zones()) {
                if (zone.purpose() == purpose && zone.presence().in(Situation.ON_STATION)) {
                    return zone.box().centre();
                }
            }
        }
        return item.size().box().centre();
    }

    /** The figure that says how far a piece may lie from its task; empty if it need not be at hand. */
    public static Optional<Figure> reach(Urgency urgency) {
        return switch (urgency) {
            case AT_ONCE -> Optional.of(Figure.STOWAGE_REACH_AT_ONCE);
            case SOON -> Optional.of(Figure.STOWAGE_REACH_SOON);
            case LATER -> Optional.empty();
        };
    }
}
