package org.shelterwright.solver.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.PutUnit;
import org.shelterwright.layouts.insight.Worsening;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Which unit to move, and how far, to gain most on one limit. Each unit that is not pinned is tried along each axis that its surface
 * leaves it, in steps of 25 mm; what rides on it goes along. Limits but those of cables and of bolting down must hold as before at
 * once; the best are then settled (wires, order) and held against every limit. The move may pass others: it is where the unit ends
 * that counts.
 */
public final class Gains {
    private static final int STEP = 25 * Lengths.MM;
    private static final int MOST_SETTLED = 24;

    private final Checker checker;
    private final Layout layout;
    private final String limit;
    private final Worsening worsening;
    private final Row before;

    /**
     * @param limit id of a limit
     * @throws IllegalArgumentException with a sentence if the layout has no row of it that is assessed
     */
    public Gains(Checker checker, Layout layout, String limit) {
        this.checker = checker;
        this.layout = layout;
        this.limit = limit;
        Ledger ledger = checker.check(layout);
        this.worsening = new Worsening(ledger);
        this.before = tightest(ledger)
                .orElseThrow(
                        () -> new IllegalArgumentException(
                                "The limit \"" + limit
                                        + "\" does not apply here, or is not assessed: there is nothing to gain on. Name another one."));
    }

    /** The tightest row of the limit as it is. */
    public Row before() {
        return before;
    }

    /** The best moves, the greatest gain first, at most one for each unit. Cost: some thousand live ledgers, some full checks. */
    public List<GainfulMove> best(int count) {
        LedgerBuilder live = new LedgerBuilder(quick());
        Scene scene = checker.scene(layout);
        Worsening alive = new Worsening(live.update(scene));
        List<Trial> trials = new ArrayList<>();
        for (PlacedUnit unit : scene.units()) {
            for (Axis axis : Axis.values()) {
                if (mayMove(unit, axis)) {
                    tryAlong(scene, unit, axis, live, alive, trials);
                    live.update(scene);
                }
            }
        }
        trials.sort(Comparator.comparingDouble((Trial trial) -> -trial.gain)
                .thenComparingInt(trial -> Math.abs(trial.by))
                .thenComparing(trial -> trial.unit.id()));
        return settled(trials, count);
    }

    private record Trial(PlacedUnit unit, Axis axis, int by, double gain, Layout layout) {}

    private LimitBook quick() {
        return new LimitBook(checker.book().limits().stream()
                .filter(one -> one.id().equals(limit)
                        || !(one instanceof Limit.AtRest)
                                && one.subject() != Subject.CABLES
                                && one.subject() != Subject.BOLT_DOWN)
                .toList());
    }

    /** Along its surface; what rides on another unit moves with it. */
    private static boolean mayMove(PlacedUnit unit, Axis axis) {
        Surface surface = unit.placement().station().surface();
        boolean onBody = unit.placement().station().host() == null;
        boolean offSurface = axis == Axis.Z && (surface == Surface.FLOOR || surface == Surface.ROOF);
        return onBody && !offSurface && !unit.placement().pin().holds(axis);
    }

    private void tryAlong(
            Scene scene, PlacedUnit unit, Axis axis, LedgerBuilder live, Worsening alive, List<Trial> trials) {
        int most = scene.body().inside().along(axis);
        for (int sign : new int[] {-1, 1}) {
            for (int by = STEP; by < most; by += STEP) {
                int shift = sign * by;
                Place place = unit.placement().station();
                Place there = place.with(place.pose().moved(Point.ORIGIN.with(axis, shift)));
                if (!scene.body()
                        .inside()
                        .box()
                        .contains(there.pose().outline(unit.item().size()))) {
                    break;
                }
                Layout moved = new PutUnit(unit.id(), there).apply(layout);
                Ledger ledger = live.update(scene.after(moved));
                double gain = tightest(ledger)
                        .map(row -> GainfulMove.use(before) - GainfulMove.use(row))
                        .orElse(0.0);
                if (gain > 1e-6 && alive.first(ledger).isEmpty()) {
                    trials.add(new Trial(unit, axis, shift, gain, moved));
                }
            }
        }
    }

    private List<GainfulMove> settled(List<Trial> trials, int count) {
        List<GainfulMove> found = new ArrayList<>();
        Set<String> units = new HashSet<>();
        int settled = 0;
        for (Trial trial : trials) {
            if (found.size() >= count || settled >= MOST_SETTLED) {
                break;
            }
            if (!units.contains(trial.unit.id())) {
                settled++;
                Settled whole = Settled.of(checker, trial.layout);
                Optional<Row> after = tightest(whole.ledger());
                if (after.isPresent()
                        && GainfulMove.use(after.get()) < GainfulMove.use(before)
                        && worsening.first(whole.ledger()).isEmpty()) {
                    units.add(trial.unit.id());
                    found.add(new GainfulMove(
                            trial.unit.id(),
                            trial.unit.name(),
                            trial.axis,
                            trial.by,
                            before,
                            after.get(),
                            whole.layout()));
                }
            }
        }
        found.sort(Comparator.comparingDouble((GainfulMove move) -> -move.gain()));
        return found;
    }

    private Optional<Row> tightest(Ledger ledger) {
        return ledger.of(limit).stream()
                .filter(row -> row.verdict() != Verdict.NOT_ASSESSED && !row.doesNotApply() && row.use() != null)
                .max(Comparator.comparingDouble(GainfulMove::use));
    }
}
