package org.shelterwright.layouts.transport.scene;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.Underside;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.transport.Crate;

/**
 * What a piece is as a thing to be carried. Its frame has the origin at the rear right bottom corner of its size; z is 0 on the
 * ground that it stands on.
 *
 * @param size the least cuboid around it
 * @param solids cuboids that it fills
 * @param wheels its axles from rear to front; empty if it stands on its underside
 * @param foot what it stands on, seen from above: around its wheels, or its underside
 * @param eyes points that lashings and slings go to
 * @param massKg as it travels, with growth (kg); {@code null} if not known
 * @param uncertaintyKg half width of the range of its mass (kg)
 * @param centre of mass; {@code null} if not known
 * @param layout that it is a part of; {@code null} of a crate or a loaded container
 * @param crate {@code null} of anything else
 * @param missing what is not known, in sentences
 */
public record Shape(
        String id,
        String name,
        Size size,
        List<Box> solids,
        List<Wheel> wheels,
        Rect foot,
        List<Provision> eyes,
        @Nullable Double massKg,
        double uncertaintyKg,
        @Nullable Point centre,
        Underside underside,
        @Nullable Layout layout,
        @Nullable Crate crate,
        List<String> missing) {
    public Shape {
        solids = List.copyOf(solids);
        wheels = List.copyOf(wheels);
        eyes = List.copyOf(eyes);
        missing = List.copyOf(missing);
    }

    public boolean wheeled() {
        return !wheels.isEmpty();
    }

    /** Greatest mass (kg); 0 if not known. */
    public double mostKg() {
        return massKg == null ? 0 : massKg + uncertaintyKg;
    }

    /** Greatest load of one of its axles (kg): the uncertainty of its mass counts there in proportion. */
    public double mostKg(Wheel axle) {
        return massKg == null || massKg == 0 ? axle.loadKg() : axle.loadKg() * mostKg() / massKg;
    }

    public Optional<Provision> eye(String named) {
        return eyes.stream().filter(one -> one.name().equals(named)).findFirst();
    }

    /** Why its mass or centre cannot be told; empty if both can. */
    public Optional<String> unknown() {
        return missing.isEmpty() ? Optional.empty() : Optional.of(missing.get(0));
    }
}
