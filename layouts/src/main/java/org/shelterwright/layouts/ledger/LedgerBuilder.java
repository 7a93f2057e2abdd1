package org.shelterwright.layouts.ledger;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Keeps the ledger of a scene, and after a change runs again only what the change can touch: limits of a unit for the
 * units that moved, limits of a pair for the pairs with one of them, limits of totals and of the whole always, limits of the
 * brief never. What rests on a moved unit, in any number of steps, counts as moved. A fresh builder's first ledger is the
 * full ledger; {@link #full} makes one in one call.
 *
 * <p>Cost of an update after one move: the number of units for each pair limit, and what the touched limits cost. Not for
 * several threads.
 */
public final class LedgerBuilder {
    private static final String MOVING = "This is answered once what is being moved is let go.";
    private static final String WORKING = "This is being worked out.";

    private final List<Limit> limits;
    private final List<Kept> kept = new ArrayList<>();
    private @Nullable Scene last;

    public LedgerBuilder(LimitBook book) {
        limits = book.limits();
        limits.forEach(limit -> kept.add(new Kept()));
    }

    /** Rows of one local limit: by unit, or by pair, that has any. The order of keys is that of a full run. */
    private static final class Kept {
        private final Map<Long, List<Row>> rows = new TreeMap<>();
        private boolean whole;

        void clear() {
            rows.clear();
            whole = false;
        }

        void put(long key, List<Row> found) {
            if (found.isEmpty()) {
                rows.remove(key);
            } else {
                rows.put(key, found);
            }
        }
    }

    /** Answers every limit of a scene from scratch. */
    public static Ledger full(LimitBook book, Scene scene) {
        return new LedgerBuilder(book).update(scene);
    }

    /**
     * Answers every limit of a scene, reusing what the units that did not move since the last call gave.
     *
     * @param scene any scene; reuse needs one that {@link Scene#with} made from the last
     */
    public Ledger update(Scene scene) {
        return update(scene, null);
    }

    /** The same while something is being moved: limits that are answered at rest are not assessed, and say so. */
    public Ledger whileMoving(Scene scene) {
        return update(scene, MOVING);
    }

    /** The same while {@link #atRest} is at work elsewhere: limits that are answered at rest are not assessed, and say so. */
    public Ledger beforeRest(Scene scene) {
        return update(scene, WORKING);
    }

    /** The rows of limits that are answered at rest, from scratch. */
    public static List<Row> atRest(LimitBook book, Scene scene) {
        double closeShare = closeShare(scene);
        List<Row> rows = new ArrayList<>();
        for (Limit limit : book.limits()) {
            if (limit instanceof Limit.AtRest dear) {
                addWhole(dear, scene, closeShare, rows);
            }
        }
        return rows;
    }

    /** The full ledger of a scene, of a ledger of it {@link #beforeRest} and what {@link #atRest} answered. */
    public static Ledger together(Ledger beforeRest, List<Row> atRest) {
        List<Row> rows = new ArrayList<>(beforeRest.rows());
        rows.removeIf(Row::awaited);
        rows.addAll(atRest);
        return new Ledger(rows);
    }

    /** @param awaiting what is said of limits that are answered at rest; {@code null} if they are answered now */
    private Ledger update(Scene scene, @Nullable String awaiting) {
        BitSet changed = changed(scene);
        List<PlacedUnit[]> meeting = meeting(scene, changed);
        double closeShare = closeShare(scene);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            if (awaiting != null && limits.get(i) instanceof Limit.AtRest limit) {
                rows.add(new Rows(closeShare).draft(limit).awaited(awaiting));
            } else {
                addRows(limits.get(i), kept.get(i), scene, changed, meeting, closeShare, rows);
            }
        }
        last = scene;
        return new Ledger(rows);
    }

    private static void addRows(
            Limit limit,
            Kept kept,
            Scene scene,
            BitSet changed,
            List<PlacedUnit[]> meeting,
            double closeShare,
            List<Row> all) {
        int before = all.size();
        if (limit instanceof Limit.OfUnit ofUnit) {
            for (int i = changed.nextSetBit(0); i >= 0; i = changed.nextSetBit(i + 1)) {
                Rows rows = new Rows(closeShare);
                ofUnit.assess(scene, scene.units().get(i), rows);
                kept.put(i, rows.list());
            }
            kept.rows.values().forEach(all::addAll);
        } else if (limit instanceof Limit.OfPair ofPair) {
            kept.rows.keySet().removeIf(key -> changed.get(first(key)) || changed.get(second(key)));
            for (PlacedUnit[] pair : meeting) {
                Rows rows = new Rows(closeShare);
                ofPair.assess(scene, pair[0], pair[1], rows);
                kept.put(key(pair[0].index(), pair[1].index()), rows.list());
            }
            kept.rows.values().forEach(all::addAll);
        } else if (limit instanceof Limit.OfBrief ofBrief) {
            if (!kept.whole) {
                Rows rows = new Rows(closeShare);
                ofBrief.assess(scene, rows);
                kept.put(0, rows.list());
                kept.whole = true;
            }
            kept.rows.values().forEach(all::addAll);
        } else {
            addWhole(limit, scene, closeShare, all);
        }
        if (all.size() == before && limit instanceof Limit.OfPair ofPair) {
            Rows rows = new Rows(closeShare);
            ofPair.assessNone(scene, rows);
            all.addAll(rows.list());
        }
        if (all.size() == before) {
            RowDraft draft = new Rows(closeShare).draft(limit);
            boolean local = limit instanceof Limit.OfUnit || limit instanceof Limit.OfPair;
            all.add(local ? draft.held(limit.heldSentence()) : draft.doesNotApply(limit.heldSentence()));
        }
    }

    private static void addWhole(Limit limit, Scene scene, double closeShare, List<Row> all) {
        Rows rows = new Rows(closeShare);
        if (limit instanceof Limit.OfTotals ofTotals) {
            ofTotals.assess(scene, rows);
        } else if (limit instanceof Limit.OfWhole ofWhole) {
            ofWhole.assess(scene, rows);
        }
        all.addAll(rows.list().isEmpty() ? List.of(rows.draft(limit).doesNotApply(limit.heldSentence())) : rows.list());
    }

    private static double closeShare(Scene scene) {
        return scene.rules().valueOr(Figure.CLOSE_SHARE, 0.9);
    }

    /** The pairs with a changed unit whose reaches overlap or touch, the lower index first. */
    private static List<PlacedUnit[]> meeting(Scene scene, BitSet changed) {
        List<PlacedUnit> units = scene.units();
        List<PlacedUnit[]> pairs = new ArrayList<>();
        for (int i = changed.nextSetBit(0); i >= 0; i = changed.nextSetBit(i + 1)) {
            PlacedUnit unit = units.get(i);
            for (int j = 0; j < units.size(); j++) {
                boolean seen = j <= i && changed.get(j);
                if (!seen && unit.meets(units.get(j))) {
                    pairs.add(i < j ? new PlacedUnit[] {unit, units.get(j)} : new PlacedUnit[] {units.get(j), unit});
                }
            }
        }
        return pairs;
    }

    private BitSet changed(Scene scene) {
        Scene before = last;
        List<PlacedUnit> units = scene.units();
        BitSet changed = new BitSet(units.size());
        if (before == null
                || before.units().size() != units.size()
                || before.rules() != scene.rules()
                || before.brief() != scene.brief()
                || before.layout().parts() != scene.layout().parts()) {
            kept.forEach(Kept::clear);
            changed.set(0, units.size());
            return changed;
        }
        for (int i = 0; i < units.size(); i++) {
            changed.set(i, before.units().get(i) != units.get(i));
        }
        scene.guestsOf(changed).stream().forEach(changed::set);
        return changed;
    }

    private static long key(int first, int second) {
        return ((long) first << 32) | second;
    }

    private static int first(long key) {
        return (int) (key >> 32);
    }

    private static int second(long key) {
        return (int) key;
    }
}
