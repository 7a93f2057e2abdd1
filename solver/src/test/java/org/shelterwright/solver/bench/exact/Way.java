package org.shelterwright.solver.bench.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.bench.Lattice;
import org.shelterwright.solver.fit.model.BodyTerms;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;

/**
 * One way to place a unit: an option with places that are a product of sets of coordinates (µm), at all of which the unit
 * and its zones lie inside the body. Places at which zones reach out through an opening make a way of their own.
 *
 * @param number number of the option
 */
record Way(int number, Option option, long[] xs, long[] ys, long[] zs) {
    /** Splits the candidates of a slot into ways; places that are no product of sets are left out. */
    static List<Way> of(Slot slot, FitProblem problem) {
        BodyTerms body = problem.bodyTerms();
        Lattice lattice = new Lattice(slot);
        int options = slot.options().size();
        List<List<Spot>> within = new ArrayList<>();
        List<List<Spot>> through = new ArrayList<>();
        for (int o = 0; o < options; o++) {
            within.add(new ArrayList<>());
            through.add(new ArrayList<>());
        }
        for (long i = 0; i < lattice.size(); i++) {
            Spot spot = lattice.spot(i);
            Option option = slot.options().get(spot.option());
            if (body.outside(option.station(), spot.x(), spot.y(), spot.z()) == 0
                    && body.zonesInside(option.station(), spot.x(), spot.y(), spot.z()) == 0) {
                boolean strict = zonesWithin(option, problem.inside(), spot);
                (strict ? within : through).get(spot.option()).add(spot);
            }
        }
        List<Way> ways = new ArrayList<>();
        for (int o = 0; o < options; o++) {
            addProduct(o, slot.options().get(o), within.get(o), ways);
            addProduct(o, slot.options().get(o), through.get(o), ways);
        }
        return ways;
    }

    private static boolean zonesWithin(Option option, Size inside, Spot spot) {
        int[] zones = option.station().zones();
        for (int i = 0; i < zones.length; i += 6) {
            if (spot.x() + zones[i] < 0
                    || spot.y() + zones[i + 1] < 0
                    || spot.z() + zones[i + 2] < 0
                    || spot.x() + zones[i + 3] > inside.x()
                    || spot.y() + zones[i + 4] > inside.y()
                    || spot.z() + zones[i + 5] > inside.z()) {
                return false;
            }
        }
        return true;
    }

    private static void addProduct(int number, Option option, List<Spot> spots, List<Way> ways) {
        TreeSet<Long> xs = new TreeSet<>();
        TreeSet<Long> ys = new TreeSet<>();
        TreeSet<Long> zs = new TreeSet<>();
        for (Spot spot : spots) {
            xs.add((long) spot.x());
            ys.add((long) spot.y());
            zs.add((long) spot.z());
        }
        if (!spots.isEmpty() && (long) xs.size() * ys.size() * zs.size() == spots.size()) {
            ways.add(new Way(number, option, array(xs), array(ys), array(zs)));
        }
    }

    private static long[] array(TreeSet<Long> values) {
        return values.stream().mapToLong(Long::longValue).toArray();
    }

    long[] coordinates(int axis) {
        return axis == 0 ? xs : axis == 1 ? ys : zs;
    }

    boolean allows(Spot spot) {
        return spot.option() == number && contains(xs, spot.x()) && contains(ys, spot.y()) && contains(zs, spot.z());
    }

    private static boolean contains(long[] sorted, long value) {
        return Arrays.binarySearch(sorted, value) >= 0;
    }
}
