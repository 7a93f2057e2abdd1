package org.shelterwright.app.desk.space.pick;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.geometry.Point3D;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Ray;
import org.shelterwright.app.desk.space.cut.Section;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Finds what a line of sight meets first among the solids that are shown. Units that hang from the roof are shown by their
 * edges alone and are met only where nothing else is. Cost: linear in the solids.
 *
 * @param shown whether a unit is there to be met
 * @param section what is cut away; {@code null} if nothing is
 */
public record Picker(
        Scene scene,
        Situation situation,
        Predicate<String> shown,
        @Nullable Section section) {
    private static final double PARALLEL = 1e-12;
    private static final List<Axis> AXES = List.of(Axis.values());
    private static final List<Face> FACES = List.of(Face.values());

    /** The first unit. */
    public Optional<Hit> unit(Ray ray) {
        return first(ray, scene.units());
    }

    /** The first of some units of the scene, where no other comes into question. */
    public Optional<Hit> first(Ray ray, List<PlacedUnit> units) {
        Hit solid = null;
        Hit hanging = null;
        for (PlacedUnit unit : units) {
            if (!shown.test(unit.id())) {
                continue;
            }
            boolean roof = unit.place(situation).surface() == Surface.ROOF;
            for (Box box : unit.solids(situation)) {
                Box left = section == null ? box : section.cut(box).orElse(null);
                Hit hit = left == null ? null : enter(ray, left, unit.id());
                if (roof) {
                    hanging = nearer(ray, hanging, hit);
                } else {
                    solid = nearer(ray, solid, hit);
                }
            }
        }
        return Optional.ofNullable(solid == null ? hanging : solid);
    }

    /** The first unit, or else the floor or wall behind. */
    public Optional<Hit> any(Ray ray) {
        return unit(ray)
                .or(() -> Optional.ofNullable(leave(ray, scene.body().inside().box())));
    }

    private static @Nullable Hit nearer(Ray ray, @Nullable Hit a, @Nullable Hit b) {
        if (a == null || b == null) {
            return a == null ? b : a;
        }
        return distance(ray, b) < distance(ray, a) ? b : a;
    }

    private static double distance(Ray ray, Hit hit) {
        return hit.place().subtract(ray.origin()).dotProduct(ray.direction());
    }

    /** Where a line enters a cuboid; {@code null} if it passes by. */
    private static @Nullable Hit enter(Ray ray, Box box, String unit) {
        double from = 0;
        double to = Double.POSITIVE_INFINITY;
        Face face = null;
        for (Axis axis : AXES) {
            double speed = along(ray.direction(), axis);
            double low = box.low(axis) / 1e3 - along(ray.origin(), axis);
            double high = box.high(axis) / 1e3 - along(ray.origin(), axis);
            if (Math.abs(speed) < PARALLEL) {
                if (low > 0 || high < 0) {
                    return null;
                }
                continue;
            }
            double near = Math.min(low / speed, high / speed);
            if (near > from) {
                from = near;
                face = face(axis, speed > 0 ? -1 : 1);
            }
            to = Math.min(to, Math.max(low / speed, high / speed));
        }
        return from > to || face == null
                ? null
                : new Hit(unit, ray.origin().add(ray.direction().multiply(from)), face, box);
    }

    /** The inner side on which a line leaves the inside of the body; {@code null} if it never enters it. */
    private static @Nullable Hit leave(Ray ray, Box inside) {
        double from = 0;
        double to = Double.POSITIVE_INFINITY;
        Face face = null;
        for (Axis axis : AXES) {
            double speed = along(ray.direction(), axis);
            double low = inside.low(axis) / 1e3 - along(ray.origin(), axis);
            double high = inside.high(axis) / 1e3 - along(ray.origin(), axis);
            if (Math.abs(speed) < PARALLEL) {
                if (low > 0 || high < 0) {
                    return null;
                }
                continue;
            }
            from = Math.max(from, Math.min(low / speed, high / speed));
            double far = Math.max(low / speed, high / speed);
            if (far < to) {
                to = far;
                face = face(axis, speed > 0 ? 1 : -1);
            }
        }
        return from > to || face == null
                ? null
                : new Hit("", ray.origin().add(ray.direction().multiply(to)), face, inside);
    }

    private static Face face(Axis axis, int sign) {
        for (Face face : FACES) {
            if (face.axis() == axis && face.sign() == sign) {
                return face;
            }
        }
        throw new IllegalStateException("Every axis has two faces.");
    }

    private static double along(Point3D point, Axis axis) {
        return switch (axis) {
            case X -> point.getX();
            case Y -> point.getY();
            case Z -> point.getZ();
        };
    }
}
