package org.shelterwright.layouts.ledger;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * One thing that must hold. Each limit is one small class that says how local it is; the full ledger, the live ledger
 * and the search all run the same classes and differ only in how much they run again after a change.
 *
 * <p>Limits hold no state and may be used by several threads.
 */
public sealed interface Limit permits Limit.OfUnit, Limit.OfPair, Limit.OfTotals, Limit.OfWhole {
    /** Stable id, "subject.name". */
    String id();

    Subject subject();

    String title();

    Severity severity();

    Source source();

    /**
     * What the row says when the limit adds none: of a local limit, which reports only what breaks or is missing, that it
     * holds everywhere; of any other, why it does not apply.
     */
    String heldSentence();

    /**
     * Concerns one unit and the body. It may look at the chain of units that carries the unit, but at no others: it is not
     * run again when these move.
     */
    non-sealed interface OfUnit extends Limit {
        void assess(Scene scene, PlacedUnit unit, Rows rows);
    }

    /**
     * Concerns two units; called once for each two whose reaches overlap or touch, the lower index first. It may look at
     * the chains of units that carry the two, but at no others.
     */
    non-sealed interface OfPair extends Limit {
        void assess(Scene scene, PlacedUnit a, PlacedUnit b, Rows rows);
    }

    /**
     * Concerns sums over all units, such as masses and moments of mass. Adds its rows, met ones too; none if it does not
     * apply.
     */
    non-sealed interface OfTotals extends Limit {
        void assess(Scene scene, Rows rows);
    }

    /** Concerns the layout as a whole, such as walkways. Adds its rows, met ones too; none if it does not apply. */
    non-sealed interface OfWhole extends Limit {
        void assess(Scene scene, Rows rows);
    }
}
