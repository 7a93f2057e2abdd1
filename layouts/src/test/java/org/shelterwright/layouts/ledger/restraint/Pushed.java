package org.shelterwright.layouts.ledger.restraint;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.fastener.Fastener;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.rules.LoadCase.Basis;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** What the tests of restraint share: load cases, bodies, items, and the change of an item. */
final class Pushed {
    static final Fasteners FASTENERS = Fasteners.builtIn();
    static final Limit STRENGTH = new FixingStrength(FASTENERS);
    static final double G = 9.80665;

    private Pushed() {}

    /** A case that pushes one way only, with the weight on. */
    static RuleSet forward(double g) {
        return set(new LoadCase(
                "own", "own case", g, 0, 0, 0, 0, 1, 1, 1, 1, Basis.PROOF, Source.stated("House rule", null)));
    }

    static RuleSet sideways(double g) {
        return set(new LoadCase(
                "own", "own case", 0, 0, g, 0, 0, 1, 1, 1, 1, Basis.PROOF, Source.stated("House rule", null)));
    }

    static RuleSet set(LoadCase loadCase) {
        return new RuleSet("own", "Own", null, List.of(), List.of(loadCase));
    }

    static TrialBody body(double pullOutN, double shearN) {
        return TrialBody.of(4000, 2000, 2000)
                .grid(
                        "floor grid",
                        Face.BOTTOM,
                        Point.ofMm(50, 50, 0),
                        Axis.X,
                        50,
                        79,
                        39,
                        new Strength(pullOutN, shearN, 20_000.0));
    }

    /** A cabinet of 600 x 400 x 1000 mm on four bolts, 50 mm from its edges, with its centre in the middle. */
    static TrialItem cabinet(double massKg, String thread) {
        return TrialItem.of("cabinet", 600, 400, 1000)
                .mass(massKg, Point.ofMm(300, 200, 500))
                .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, thread)
                .fixing(Point.ofMm(50, 350, 0), Face.BOTTOM, thread)
                .fixing(Point.ofMm(550, 50, 0), Face.BOTTOM, thread)
                .fixing(Point.ofMm(550, 350, 0), Face.BOTTOM, thread);
    }

    /** The item with its fixings changed. */
    static Item changed(Item item, Change change) {
        List<Fixing> fixings = new ArrayList<>();
        Fastener bolt = change.bolt();
        for (Fixing one : item.fixings()) {
            fixings.add(
                    bolt == null
                            ? one
                            : new Fixing(one.name(), one.at(), one.face(), bolt.thread(), bolt.grade(), null));
        }
        Fixing like = item.fixings().get(0);
        for (Point at : change.more()) {
            fixings.add(new Fixing("more " + fixings.size(), at, like.face(), like.thread(), like.grade(), null));
        }
        return with(item, fixings, 1);
    }

    /** The item with other fixings and its mass times a factor. */
    static Item with(Item item, List<Fixing> fixings, double massFactor) {
        MassData mass = item.mass();
        Double massKg = Objects.requireNonNull(mass.massKg());
        MassData heavier = new MassData(
                massKg * massFactor,
                mass.centre(),
                mass.basis(),
                mass.growthShare(),
                mass.uncertaintyKg(),
                mass.centreUncertainty());
        return item.but().fixings(fixings).mass(heavier).build();
    }
}
