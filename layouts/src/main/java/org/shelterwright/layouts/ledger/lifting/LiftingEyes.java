package org.shelterwright.layouts.ledger.lifting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.body.Provision.Use;
import org.shelterwright.catalog.space.Lengths;

/**
 * The four eyes by which a body is lifted.
 *
 * @param eyes in the order of {@link FourPoints}
 * @param points their places in plan (m)
 * @param height their height above the floor (m)
 */
record LiftingEyes(List<Provision> eyes, FourPoints points, double height) {
    LiftingEyes {
        eyes = List.copyOf(eyes);
    }

    /** The highest provisions for lifting; empty if they are not four at the corners of a level rectangle. */
    static Optional<LiftingEyes> of(Body body) {
        List<Provision> all = body.provisions().stream()
                .filter(one -> one.use() != Use.TIE_DOWN)
                .toList();
        int top = all.stream().mapToInt(one -> one.at().z()).max().orElse(0);
        List<Provision> eyes =
                new ArrayList<>(all.stream().filter(one -> one.at().z() == top).toList());
        eyes.sort(Comparator.comparingInt((Provision one) -> one.at().x())
                .thenComparingInt(one -> one.at().y()));
        TreeSet<Integer> xs = new TreeSet<>();
        TreeSet<Integer> ys = new TreeSet<>();
        eyes.forEach(one -> {
            xs.add(one.at().x());
            ys.add(one.at().y());
        });
        if (eyes.size() != 4 || xs.size() != 2 || ys.size() != 2) {
            return Optional.empty();
        }
        FourPoints points = new FourPoints(
                Lengths.metres(xs.first()),
                Lengths.metres(xs.last()),
                Lengths.metres(ys.first()),
                Lengths.metres(ys.last()));
        return Optional.of(new LiftingEyes(eyes, points, Lengths.metres(top)));
    }
}
