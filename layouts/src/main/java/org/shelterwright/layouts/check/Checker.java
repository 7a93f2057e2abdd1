package org.shelterwright.layouts.check;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.access.AccessLimits;
import org.shelterwright.layouts.ledger.axles.AxleLimits;
import org.shelterwright.layouts.ledger.cables.CableLimits;
import org.shelterwright.layouts.ledger.boltdown.BoltDownLimits;
import org.shelterwright.layouts.ledger.fit.FitLimits;
import org.shelterwright.layouts.ledger.floor.FloorLimits;
import org.shelterwright.layouts.ledger.heat.HeatLimits;
import org.shelterwright.layouts.ledger.lifting.LiftingLimits;
import org.shelterwright.layouts.ledger.mass.MassLimits;
import org.shelterwright.layouts.ledger.power.PowerLimits;
import org.shelterwright.layouts.ledger.racks.RackLimits;
import org.shelterwright.layouts.ledger.restraint.Fasteners;
import org.shelterwright.layouts.ledger.restraint.RestraintLimits;
import org.shelterwright.layouts.ledger.stability.StabilityLimits;
import org.shelterwright.layouts.ledger.stowage.StowageLimits;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;

/** Checks layouts: the one place where all limits and the rule sets come together. Safe for several threads. */
public final class Checker {
    private final LimitBook book;
    private final List<RuleSet> ruleSets;

    public Checker(LimitBook book, List<RuleSet> ruleSets) {
        this.book = book;
        this.ruleSets = List.copyOf(ruleSets);
    }

    /** All limits that this program knows, with its built-in rule sets. */
    public static Checker standard() {
        List<Limit> limits = new ArrayList<>();
        limits.addAll(FitLimits.all());
        limits.addAll(AccessLimits.all());
        limits.addAll(MassLimits.all());
        limits.addAll(FloorLimits.all());
        limits.addAll(AxleLimits.all());
        limits.addAll(StabilityLimits.all());
        Fasteners fasteners = Fasteners.builtIn();
        limits.addAll(RestraintLimits.all(fasteners));
        limits.addAll(LiftingLimits.all());
        limits.addAll(CableLimits.all());
        limits.addAll(PowerLimits.all());
        limits.addAll(HeatLimits.all());
        limits.addAll(BoltDownLimits.all());
        limits.addAll(RackLimits.all(fasteners));
        limits.addAll(StowageLimits.all());
        return new Checker(new LimitBook(limits), RuleSets.builtIn());
    }

    public LimitBook book() {
        return book;
    }

    public List<RuleSet> ruleSets() {
        return ruleSets;
    }

    /**
     * Resolves a layout with the rules of its brief.
     *
     * @throws IllegalArgumentException if the brief names a rule set or limit that there is not
     */
    public Scene scene(Layout layout) {
        return Scene.of(layout, Rules.of(layout.brief(), ruleSets));
    }

    /**
     * Answers every limit of a layout from scratch.
     *
     * @throws IllegalArgumentException if the brief names a rule set or limit that there is not
     */
    public Ledger check(Layout layout) {
        return LedgerBuilder.full(book, scene(layout));
    }
}
