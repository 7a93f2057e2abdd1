package org.shelterwright.layouts.insight;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Influence;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * The chance that a limit of masses, axles or stability is exceeded: masses and centres are drawn evenly and independently from
 * their ranges, and each draw is held against the limits. Tanks, crew and trailer stay as the worst load state asks, so it is
 * the chance that some load state exceeds the limit.
 */
public final class Chance {
    private static final List<Subject> SUBJECTS = List.of(Subject.MASS, Subject.AXLES, Subject.STABILITY);

    private final Scene scene;
    private final LimitBook book;

    public Chance(LimitBook all, Scene scene) {
        this.scene = scene;
        this.book = new LimitBook(all.limits().stream()
                .filter(limit -> limit instanceof Limit.OfTotals && SUBJECTS.contains(limit.subject()))
                .toList());
    }

    private record Key(String limit, String title) {}

    private static final class Count {
        private final Row row;
        private int exceeded;
        private int draws;

        Count(Row row) {
            this.row = row;
        }
    }

    /**
     * Draws so often; the same seed gives the same.
     *
     * @return one for each limit that is assessed, the likeliest to be exceeded first
     */
    public List<Odds> draw(int draws, long seed) {
        Map<Key, Count> counts = new LinkedHashMap<>();
        rows(LedgerBuilder.full(book, scene)).forEach(row -> counts.putIfAbsent(key(row), new Count(row)));
        SplittableRandom dice = new SplittableRandom(seed);
        for (int i = 0; i < draws; i++) {
            Map<Key, Boolean> broken = new LinkedHashMap<>();
            for (Row row : rows(LedgerBuilder.full(book, LoadStates.drawn(scene, dice.split())))) {
                broken.merge(key(row), row.verdict() == Verdict.BROKEN, (a, b) -> a || b);
            }
            broken.forEach((key, exceeds) -> {
                Count count = counts.get(key);
                if (count != null) {
                    count.draws++;
                    count.exceeded += exceeds ? 1 : 0;
                }
            });
        }
        List<Odds> odds = new ArrayList<>();
        counts.values().forEach(count -> odds.add(odds(count)));
        odds.sort((a, b) -> Double.compare(b.share(), a.share()));
        return odds;
    }

    private static List<Row> rows(Ledger ledger) {
        return ledger.rows().stream()
                .filter(row -> row.verdict() != Verdict.NOT_ASSESSED && !row.doesNotApply())
                .filter(row -> !row.limit().equals("mass.data-gaps"))
                .toList();
    }

    private static Key key(Row row) {
        return new Key(row.limit(), row.title());
    }

    private Odds odds(Count count) {
        Row row = count.row;
        Sum sum = sum(row);
        return new Odds(
                row.subject(),
                row.limit(),
                row.title(),
                count.exceeded,
                count.draws,
                sum == null ? null : Double.valueOf(sum.above()),
                sum != null && sum.widths.length <= SumOfUniforms.MOST_EXACT);
    }

    private record Sum(double nominalKg, double[] widths, double capacityKg) {
        double above() {
            return SumOfUniforms.above(capacityKg - nominalKg, widths);
        }
    }

    /** The masses whose sum a row holds against its capacity; {@code null} if it is not about a sum of masses. */
    private @Nullable Sum sum(Row row) {
        Double capacity = row.capacity();
        if (capacity == null) {
            return null;
        }
        LoadStates states = LoadStates.of(scene);
        if (row.limit().equals("mass.body-gross")) {
            Quantity mass = Quantity.ofBody(Influence.MASS);
            return sum(mass, states.most(mass, states.modes()), capacity);
        }
        if (row.limit().equals("mass.vehicle-gross")) {
            for (VehicleLoads vehicle : VehicleLoads.all(scene)) {
                if (row.title().endsWith(vehicle.vehicle().name())) {
                    return sum(vehicle.mass(), states.most(vehicle.mass(), vehicle.modes()), capacity);
                }
            }
        }
        return null;
    }

    private Sum sum(Quantity mass, Extreme most, double capacityKg) {
        double[] widths = LoadStates.of(scene).halfWidthsKg(mass, most.state().mode());
        return new Sum(most.nominal(), widths, capacityKg);
    }
}
