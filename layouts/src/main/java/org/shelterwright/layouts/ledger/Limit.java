package org.shelterwright.layouts.ledger;

import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * One thing that must hold. Each limit is one small class that says how local it is; the full ledger, the live ledger
 * and the search all run the same classes and differ only in how much they run again after a change.
 *
 * <p>Limits hold no state and may be used by several threads.
 */
public sealed interface Limit extends Stated
        permits Limit.OfBrief, Limit.OfUnit, Limit.OfPair, Limit.OfTotals, Limit.OfWhole {
    /**
     * Concerns what is asked, not where it stands: brief, catalog entries and rules, but no placement. It is not run again
     * when units move. Always adds its rows, met ones too.
     */
    non-sealed interface OfBrief extends Limit {
        void assess(Scene scene, Rows rows);
    }

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

        /** Called if no two gave a row: says what keeps all from being judged, such as a figure that is not set; adds nothing if nothing does. */
        default void assessNone(Scene scene, Rows rows) {}
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

    /** The same, but too dear to be answered while something is being moved; it is answered once that is let go. */
    interface AtRest extends OfWhole {}
}
