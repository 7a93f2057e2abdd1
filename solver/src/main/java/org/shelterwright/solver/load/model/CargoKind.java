package org.shelterwright.solver.load.model;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Size;

/**
 * Equal pieces of cargo.
 *
 * @param name as messages call it
 * @param size its own edges; the unit is that of the whole problem (µm in the program, whatever a published set uses)
 * @param upright which edges may stand upright
 * @param count how many there are, at least 1
 * @param massKg mass of one piece (kg); {@code NaN} if not known
 * @param topLoadKg mass that may rest on one piece (kg); zero: nothing on top; infinite: not limited
 * @param stop number of the stop at which it is taken off, 1 the first
 * @param together all pieces of all kinds with the same name here go, or none; {@code null}: each piece by itself
 * @param worth how much its volume counts against that of others when not all will go, usually 1
 * @param segregation class that {@link Apart} speaks of; {@code null}: none
 */
public record CargoKind(
        String name,
        Size size,
        Upright upright,
        int count,
        double massKg,
        double topLoadKg,
        int stop,
        double worth,
        @Nullable String together,
        @Nullable String segregation) {
    public CargoKind {
        if (count < 1) {
            throw new IllegalArgumentException("The count " + count + " of " + name + " must be at least 1.");
        }
        if (massKg <= 0 || Double.isInfinite(massKg)) {
            throw new IllegalArgumentException("The mass " + massKg + " kg of " + name + " must be above zero.");
        }
        if (!(topLoadKg >= 0)) {
            throw new IllegalArgumentException("The load " + topLoadKg + " kg on " + name + " must not be below zero.");
        }
        if (stop < 1) {
            throw new IllegalArgumentException("The stop " + stop + " of " + name + " must be at least 1.");
        }
        if (!(worth > 0) || Double.isInfinite(worth)) {
            throw new IllegalArgumentException("The worth " + worth + " of " + name + " must be above zero.");
        }
    }

    /** Pieces of which only size and count matter. */
    public static CargoKind of(String name, Size size, Upright upright, int count) {
        return new CargoKind(name, size, upright, count, Double.NaN, Double.POSITIVE_INFINITY, 1, 1, null, null);
    }

    public CargoKind withCount(int pieces) {
        return new CargoKind(name, size, upright, pieces, massKg, topLoadKg, stop, worth, together, segregation);
    }

    public CargoKind withMass(double kg) {
        return new CargoKind(name, size, upright, count, kg, topLoadKg, stop, worth, together, segregation);
    }

    public CargoKind withTopLoad(double kg) {
        return new CargoKind(name, size, upright, count, massKg, kg, stop, worth, together, segregation);
    }

    public CargoKind forStop(int number) {
        return new CargoKind(name, size, upright, count, massKg, topLoadKg, number, worth, together, segregation);
    }

    public CargoKind worth(double share) {
        return new CargoKind(name, size, upright, count, massKg, topLoadKg, stop, share, together, segregation);
    }

    public CargoKind inGroup(String group) {
        return new CargoKind(name, size, upright, count, massKg, topLoadKg, stop, worth, group, segregation);
    }

    public CargoKind ofClass(String name) {
        return new CargoKind(this.name, size, upright, count, massKg, topLoadKg, stop, worth, together, name);
    }

    /** Volume of one piece, in cubed units of length. */
    public double volume() {
        return (double) size.x() * size.y() * size.z();
    }
}
