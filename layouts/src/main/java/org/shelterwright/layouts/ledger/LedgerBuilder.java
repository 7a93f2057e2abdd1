package org.shelterwright.layouts.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Keeps the ledger of a scene, and after a change runs again only what the change can touch. A fresh builder's first
 * ledger is the full ledger; {@link #full} makes one in one call.
 *
 * <p>Not for several threads.
 */
public final class LedgerBuilder {
    private final LimitBook book;
    private final Map<Long, List<Row>> ofUnits = new HashMap<>();
    private final Map<Long, List<Row>> ofPairs = new HashMap<>();
    private @Nullable Scene last;

    public LedgerBuilder(LimitBook book) {
        this.book = book;
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
        Set<Integer> changed = changed(scene);
        double closeShare = scene.rules().valueOr(Figure.CLOSE_SHARE, 0.9);
        List<Row> rows = new ArrayList<>();
        List<Limit> limits = book.limits();
        for (int i = 0; i < limits.size(); i++) {
            rows.addAll(rowsOf(i, limits.get(i), scene, changed, closeShare));
        }
        last = scene;
        return new Ledger(rows);
    }

    private List<Row> rowsOf(int number, Limit limit, Scene scene, Set<Integer> changed, double closeShare) {
        Rows found = new Rows(closeShare);
        if (limit instanceof Limit.OfUnit ofUnit) {
            unitRows(number, ofUnit, scene, changed, closeShare, found);
        } else if (limit instanceof Limit.OfPair ofPair) {
            pairRows(number, ofPair, scene, changed, closeShare, found);
        } else if (limit instanceof Limit.OfTotals ofTotals) {
            ofTotals.assess(scene, found);
        } else if (limit instanceof Limit.OfWhole ofWhole) {
            ofWhole.assess(scene, found);
        }
        if (found.list().isEmpty()) {
            found.add(found.draft(limit).held(limit.heldSentence()));
        }
        return found.list();
    }

    private void unitRows(
            int number, Limit.OfUnit limit, Scene scene, Set<Integer> changed, double closeShare, Rows found) {
        for (PlacedUnit unit : scene.units()) {
            long key = key(number, unit.index(), 0);
            if (changed.contains(unit.index()) || !ofUnits.containsKey(key)) {
                Rows rows = new Rows(closeShare);
                limit.assess(scene, unit, rows);
                ofUnits.put(key, rows.list());
            }
            ofUnits.getOrDefault(key, List.of()).forEach(found::add);
        }
    }

    private void pairRows(
            int number, Limit.OfPair limit, Scene scene, Set<Integer> changed, double closeShare, Rows found) {
        List<PlacedUnit> units = scene.units();
        for (int i = 0; i < units.size(); i++) {
            for (int j = i + 1; j < units.size(); j++) {
                long key = key(number, i, j);
                if (last == null || changed.contains(i) || changed.contains(j)) {
                    ofPairs.remove(key);
                    if (meet(units.get(i), units.get(j))) {
                        Rows rows = new Rows(closeShare);
                        limit.assess(scene, units.get(i), units.get(j), rows);
                        if (!rows.list().isEmpty()) {
                            ofPairs.put(key, rows.list());
                        }
                    }
                }
                List<Row> rows = ofPairs.get(key);
                if (rows != null) {
                    rows.forEach(found::add);
                }
            }
        }
    }

    private static boolean meet(PlacedUnit a, PlacedUnit b) {
        for (Situation situation : Situation.values()) {
            var ra = a.reach(situation);
            var rb = b.reach(situation);
            if (ra.x0() <= rb.x1()
                    && rb.x0() <= ra.x1()
                    && ra.y0() <= rb.y1()
                    && rb.y0() <= ra.y1()
                    && ra.z0() <= rb.z1()
                    && rb.z0() <= ra.z1()) {
                return true;
            }
        }
        return false;
    }

    private Set<Integer> changed(Scene scene) {
        Scene before = last;
        Set<Integer> changed = new HashSet<>();
        if (before == null
                || before.units().size() != scene.units().size()
                || before.rules() != scene.rules()
                || before.body() != scene.body()) {
            ofUnits.clear();
            ofPairs.clear();
            last = null;
            scene.units().forEach(unit -> changed.add(unit.index()));
            return changed;
        }
        for (PlacedUnit unit : scene.units()) {
            if (before.units().get(unit.index()) != unit) {
                changed.add(unit.index());
            }
        }
        addGuests(scene, changed);
        return changed;
    }

    /** A unit mounted on or under a moved one is judged again: its limits look at its host. */
    private static void addGuests(Scene scene, Set<Integer> changed) {
        for (PlacedUnit unit : scene.units()) {
            for (Situation situation : Situation.values()) {
                String host = unit.place(situation).host();
                if (host != null
                        && scene.unit(host)
                                .map(found -> changed.contains(found.index()))
                                .orElse(false)) {
                    changed.add(unit.index());
                }
            }
        }
    }

    private static long key(int limit, int i, int j) {
        return ((long) limit << 40) | ((long) i << 20) | j;
    }
}
