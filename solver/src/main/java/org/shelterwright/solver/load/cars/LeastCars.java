package org.shelterwright.solver.load.cars;

import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;

/** How many equal cars are needed at least. */
final class LeastCars {
    private LeastCars() {}

    /**
     * The greatest of three bounds: volume, mass, and pieces longer than half the room in all three directions, of which
     * one car holds one.
     */
    static int of(LoadProblem problem) {
        double volume = problem.kinds().stream()
                .mapToDouble(kind -> kind.count() * kind.volume())
                .sum();
        int least = (int) Math.ceil(volume / problem.roomVolume());
        double limit = problem.practice().massLimitKg();
        if (limit < Double.POSITIVE_INFINITY) {
            double mass = problem.kinds().stream()
                    .mapToDouble(kind -> kind.count() * kind.massKg())
                    .sum();
            least = Math.max(least, (int) Math.ceil(mass / limit - 1e-9));
        }
        int alone = problem.kinds().stream()
                .filter(kind -> fillsACar(problem.room(), kind))
                .mapToInt(CargoKind::count)
                .sum();
        return Math.max(least, alone);
    }

    private static boolean fillsACar(Size room, CargoKind kind) {
        return kind.upright().stances(kind.size()).stream()
                .allMatch(s -> 2L * s.x() > room.x() && 2L * s.y() > room.y() && 2L * s.z() > room.z());
    }
}
