package org.shelterwright.solver.fit.model;

import java.util.OptionalDouble;
import java.util.Set;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * The figures of the access limits (µm) and the ways in and out, compiled. A figure that is not set is zero, or the
 * greatest number where that means "no bound".
 *
 * @param walkway width of walkways
 * @param exitWidth width of a way out
 * @param exitCount ways out needed where more than one person works
 * @param headroom height below which solids are in the way
 * @param step height below which they are stepped over
 * @param seatHeadroom height over the bottom of a seat zone
 * @param reach greatest height of a control
 * @param doors x0, y0, x1, y1 of each door, seen from above
 * @param exits the same of each exit in a wall
 */
public record AccessRules(
        int walkway,
        int exitWidth,
        int exitCount,
        int headroom,
        int step,
        int seatHeadroom,
        int reach,
        int[] doors,
        int[] exits) {
    static AccessRules of(Scene scene, Set<String> relaxed) {
        Size inside = scene.body().inside();
        int[] doors = scene.body().openings().stream()
                .filter(opening ->
                        opening.kind() == Opening.Kind.DOOR && opening.wall().upright())
                .flatMapToInt(opening -> plan(opening, inside))
                .toArray();
        int[] exits = scene.body().openings().stream()
                .filter(opening -> opening.exit() && opening.wall().upright())
                .flatMapToInt(opening -> plan(opening, inside))
                .toArray();
        int headroom = length(scene, Figure.WALKWAY_HEADROOM, 0);
        return new AccessRules(
                headroom == 0 || relaxed.contains("access.walkway") ? 0 : length(scene, Figure.WALKWAY_WIDTH, 0),
                headroom == 0 || relaxed.contains("access.way-out") ? 0 : length(scene, Figure.EXIT_WIDTH, 0),
                relaxed.contains("access.exit-count")
                        ? 1
                        : (int) Math.round(scene.rules().valueOr(Figure.EXIT_COUNT, 1)),
                headroom,
                length(scene, Figure.STEP_HEIGHT, 0),
                relaxed.contains("access.seat-headroom") ? 0 : length(scene, Figure.SEAT_HEADROOM, 0),
                relaxed.contains("access.reach")
                        ? Integer.MAX_VALUE
                        : length(scene, Figure.REACH_HIGHEST, Integer.MAX_VALUE),
                doors,
                exits);
    }

    private static int length(Scene scene, Figure figure, int otherwise) {
        OptionalDouble value = scene.rules().value(figure);
        return value.isEmpty()
                ? otherwise
                : (int) Math.round(Math.max(-500_000, Math.min(500_000, value.getAsDouble())) * Lengths.MM);
    }

    private static java.util.stream.IntStream plan(Opening opening, Size inside) {
        Box area = opening.area();
        return java.util.stream.IntStream.of(
                Math.max(0, Math.min(inside.x(), area.x0())),
                Math.max(0, Math.min(inside.y(), area.y0())),
                Math.max(0, Math.min(inside.x(), area.x1())),
                Math.max(0, Math.min(inside.y(), area.y1())));
    }
}
