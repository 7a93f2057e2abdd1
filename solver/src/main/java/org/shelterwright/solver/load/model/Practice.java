package org.shelterwright.solver.load.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;

/**
 * What practice asks of a load beside that it fits.
 *
 * @param massLimitKg most that may be loaded (kg); infinite: not limited
 * @param balance linear limits on its moments
 * @param apart classes to be kept apart
 * @param keptFree cuboids that stand on the floor and take no cargo: wheel arches, columns, gaps for lashings
 * @param pinned pieces that stay where they are; they stand on the floor or on each other
 * @param door clear opening that every piece must pass upright as it stands; {@code null}: not limited
 * @param byStops whether pieces leave through the whole end at the highest x, stop after stop, none blocked by a piece of a
 *     later stop
 */
public record Practice(
        double massLimitKg,
        List<BalanceLine> balance,
        List<Apart> apart,
        List<Box> keptFree,
        List<Stowed> pinned,
        @Nullable Door door,
        boolean byStops) {
    /** Nothing beyond that it fits. */
    public static final Practice NONE =
            new Practice(Double.POSITIVE_INFINITY, List.of(), List.of(), List.of(), List.of(), null, false);

    public Practice {
        balance = List.copyOf(balance);
        apart = List.copyOf(apart);
        keptFree = List.copyOf(keptFree);
        pinned = List.copyOf(pinned);
        if (!(massLimitKg > 0)) {
            throw new IllegalArgumentException("The mass limit of " + massLimitKg + " kg must be above zero.");
        }
    }

    /**
     * A clear opening.
     *
     * @param width clear width (unit of the problem)
     * @param height clear height
     */
    public record Door(int width, int height) {
        /** Whether a piece passes as it stands, turned about the vertical if need be. */
        public boolean passes(int dx, int dy, int dz) {
            return dz <= height && Math.min(dx, dy) <= width;
        }
    }

    public Practice withMassLimit(double kg) {
        return new Practice(kg, balance, apart, keptFree, pinned, door, byStops);
    }

    public Practice withBalance(List<BalanceLine> lines) {
        return new Practice(massLimitKg, lines, apart, keptFree, pinned, door, byStops);
    }

    public Practice withApart(List<Apart> rules) {
        return new Practice(massLimitKg, balance, rules, keptFree, pinned, door, byStops);
    }

    public Practice withKeptFree(List<Box> boxes) {
        return new Practice(massLimitKg, balance, apart, boxes, pinned, door, byStops);
    }

    public Practice withPinned(List<Stowed> pieces) {
        return new Practice(massLimitKg, balance, apart, keptFree, pieces, door, byStops);
    }

    public Practice withDoor(int width, int height) {
        return new Practice(massLimitKg, balance, apart, keptFree, pinned, new Door(width, height), byStops);
    }

    public Practice inOrderOfStops() {
        return new Practice(massLimitKg, balance, apart, keptFree, pinned, door, true);
    }

    /** Whether a piece's mass matters. */
    public boolean weighs() {
        return massLimitKg < Double.POSITIVE_INFINITY || !balance.isEmpty();
    }
}
