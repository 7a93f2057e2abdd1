package org.shelterwright.layouts.ledger.lifting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.body.Provision.Use;
import org.shelterwright.catalog.space.Lengths;

/**
 * Four eyes or pads that carry a body together.
 *
 * @param all in the order of {@link FourPoints}
 * @param points their places in plan (m)
 * @param height their height above the floor (m)
 */
record FourProvisions(List<Provision> all, FourPoints points, double height) {
    FourProvisions {
        all = List.copyOf(all);
    }

    /** The highest provisions for lifting; empty if they are not four at the corners of a level rectangle. */
    static Optional<FourProvisions> eyes(Body body) {
        List<Provision> eyes = body.provisions().stream()
                .filter(one -> one.use() == Use.LIFTING || one.use() == Use.BOTH)
                .toList();
        int top = eyes.stream().mapToInt(one -> one.at().z()).max().orElse(0);
        return of(eyes.stream().filter(one -> one.at().z() == top).toList());
    }

    /** The pads for stands; empty if they are not four at the corners of a level rectangle. */
    static Optional<FourProvisions> pads(Body body) {
        return of(
                body.provisions().stream().filter(one -> one.use() == Use.STAND).toList());
    }

    private static Optional<FourProvisions> of(List<Provision> provisions) {
        TreeSet<Integer> xs = new TreeSet<>();
        TreeSet<Integer> ys = new TreeSet<>();
        TreeSet<Integer> zs = new TreeSet<>();
        provisions.forEach(one -> {
            xs.add(one.at().x());
            ys.add(one.at().y());
            zs.add(one.at().z());
        });
        if (provisions.size() != 4 || xs.size() != 2 || ys.size() != 2 || zs.size() != 1) {
            return Optional.empty();
        }
        List<Provision> sorted = provisions.stream()
                .sorted(Comparator.comparingInt((Provision one) -> one.at().x())
                        .thenComparingInt(one -> one.at().y()))
                .toList();
        FourPoints points = new FourPoints(
                Lengths.metres(xs.first()),
                Lengths.metres(xs.last()),
                Lengths.metres(ys.first()),
                Lengths.metres(ys.last()));
        return Optional.of(new FourProvisions(sorted, points, Lengths.metres(zs.first())));
    }
}
