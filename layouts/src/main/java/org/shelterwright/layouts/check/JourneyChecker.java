package org.shelterwright.layouts.check;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.restraint.Fasteners;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.ledger.transport.JourneyLedger.LegLedger;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.ledger.transport.burden.BurdenLimits;
import org.shelterwright.layouts.ledger.transport.place.PlaceLimits;
import org.shelterwright.layouts.ledger.transport.securing.SecuringLimits;
import org.shelterwright.layouts.ledger.transport.way.WayLimits;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.scene.JourneyParts;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** Checks journeys: the one place where all limits of transport and the rule sets come together. Safe for several threads. */
public final class JourneyChecker {
    private static final double CLOSE = 0.9;

    private final List<LegLimit> limits;
    private final List<RuleSet> ruleSets;

    public JourneyChecker(List<LegLimit> limits, List<RuleSet> ruleSets) {
        this.limits = List.copyOf(limits);
        this.ruleSets = List.copyOf(ruleSets);
    }

    /** All limits that this program knows, with its built-in rule sets. */
    public static JourneyChecker standard() {
        List<LegLimit> limits = new ArrayList<>();
        limits.addAll(PlaceLimits.all());
        limits.addAll(BurdenLimits.all());
        limits.addAll(SecuringLimits.all());
        limits.addAll(WayLimits.all(Fasteners.builtIn()));
        return new JourneyChecker(limits, RuleSets.builtIn());
    }

    public List<LegLimit> limits() {
        return limits;
    }

    public List<RuleSet> ruleSets() {
        return ruleSets;
    }

    /**
     * Resolves a journey.
     *
     * @throws IllegalArgumentException if it names a rule set, figure, car or layout that there is not
     */
    public JourneyScene scene(Journey journey, JourneyParts parts) {
        return JourneyScene.of(journey, parts, ruleSets);
    }

    /** Answers every limit of a resolved journey from scratch, leg by leg. */
    public JourneyLedger check(JourneyScene scene) {
        return new JourneyLedger(scene.legs().stream().map(this::check).toList());
    }

    /**
     * Answers the limits of those legs anew on which something differs from a scene that was answered before; the others keep their
     * rows. The same as {@link #check(JourneyScene)}, but for the time.
     *
     * @param ledger every limit of the scene before
     */
    public JourneyLedger update(JourneyLedger ledger, JourneyScene before, JourneyScene now) {
        boolean samePieces = before.journey().pieces().equals(now.journey().pieces())
                && before.journey().limits().equals(now.journey().limits())
                && before.parts() == now.parts()
                && ledger.legs().size() == now.legs().size();
        if (!samePieces) {
            return check(now);
        }
        List<LegLedger> legs = new ArrayList<>();
        for (int i = 0; i < now.legs().size(); i++) {
            LegScene leg = now.legs().get(i);
            boolean same = same(before.legs().get(i), leg);
            legs.add(same ? ledger.legs().get(i) : check(leg));
        }
        return new JourneyLedger(legs);
    }

    private static boolean same(LegScene a, LegScene b) {
        return a.leg().equals(b.leg())
                && a.loads().stream()
                        .map(PlacedLoad::load)
                        .toList()
                        .equals(b.loads().stream().map(PlacedLoad::load).toList());
    }

    /** Answers every limit of one leg. */
    public LegLedger check(LegScene leg) {
        List<Row> all = new ArrayList<>();
        double closeShare = leg.rules().valueOr(Figure.CLOSE_SHARE, CLOSE);
        for (LegLimit limit : limits) {
            Rows rows = new Rows(closeShare);
            limit.assess(leg, rows);
            all.addAll(
                    rows.list().isEmpty()
                            ? List.of(rows.draft(limit).state(leg.state()).doesNotApply(limit.heldSentence()))
                            : rows.list());
        }
        return new LegLedger(leg.leg(), leg.number(), new Ledger(all));
    }
}
